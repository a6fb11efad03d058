package org.panwright.app.fx;

import java.util.List;
import javafx.scene.Node;

/** A view of several parts; F6 takes the keyboard from one to the next. */
public interface Parted {

  /** The parts there are now, in the order they are read; some may take no keyboard. */
  List<Node> parts();
}
