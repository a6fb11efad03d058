package org.panwright.app.fx;

import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/** The place of a pane that is built a moment after the window is first seen. */
public final class BuiltLater extends StackPane {

  /**
   * @param later when the pane is built; an executor that runs at once builds it now
   * @param pane builds it
   */
  public BuiltLater(Executor later, Supplier<? extends Region> pane) {
    later.execute(() -> getChildren().setAll(pane.get()));
  }
}
