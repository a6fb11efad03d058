package org.panwright.app.ring;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.layout.StackPane;
import org.panwright.analysis.compare.Comparison;
import org.panwright.analysis.reach.Ring;

/**
 * Two hue rings laid over each other, the first as a shape, the second as a line, with the arcs
 * marked where one falls behind the other.
 */
public final class TwoRings extends StackPane {
  private static final double LEAST = 220;

  private final ObjectProperty<Optional<RingPicture>> picture =
      new SimpleObjectProperty<>(Optional.empty());

  /** Rings to look at. */
  public TwoRings() {
    this(Optional.empty());
  }

  /** Rings of which a place can be picked. */
  public TwoRings(RingCursor cursor) {
    this(Optional.of(cursor));
  }

  private TwoRings(Optional<RingCursor> cursor) {
    RingCanvas canvas = new RingCanvas(picture, cursor);
    getStyleClass().add("two-rings");
    setMinSize(LEAST, LEAST);
    canvas.accessibleTextProperty().bind(accessibleTextProperty());
    getChildren().setAll(canvas);
  }

  /** Shows two rings before the shelf's. */
  public void show(
      Ring first,
      Ring second,
      Ring shelf,
      List<Comparison.Shift> lost,
      List<Comparison.Shift> won) {
    picture.set(
        Optional.of(
            new RingPicture(
                first,
                shelf,
                Optional.of(second),
                Ring.Part.ALL,
                List.of(),
                List.of(),
                lost,
                won)));
  }

  /** Shows nothing. */
  public void clear() {
    picture.set(Optional.empty());
  }
}
