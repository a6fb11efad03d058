package org.panwright.app.swatches;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.Sentence;

/** What there is to say about a picture, one below the other; takes no room while it is nothing. */
public final class Remarks extends VBox {
  private static final double GAP = 6;

  public Remarks() {
    super(GAP);
    visibleProperty().bind(Bindings.isNotEmpty(getChildren()));
    managedProperty().bind(visibleProperty());
  }

  /** Says these sentences in place of all before. */
  public void show(List<String> sentences) {
    getChildren().setAll(sentences.stream().map(said -> Sentence.of(said, "warn")).toList());
  }

  /** Adds a sentence. */
  public void warn(String sentence) {
    add(Sentence.of(sentence, "warn"));
  }

  /** Adds something else, such as a button that sets right what was said. */
  public void add(Node part) {
    getChildren().add(part);
  }
}
