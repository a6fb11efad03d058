package org.panwright.app.swatches;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import org.panwright.app.fx.Swatches;
import org.panwright.colour.Lab;
import org.panwright.words.SwatchesWords;

/** A patch as it was read above what the model makes of it, with their distance. */
public final class ReadAndModel extends VBox {
  private static final double WIDTH = 62;
  private static final double HEIGHT = 20;
  private static final double GAP = 2;

  public ReadAndModel(PatchChip chip) {
    super(GAP);
    VBox colours = new VBox(half(Optional.of(chip.read())), half(chip.model()));
    String distance =
        chip.distance()
            .map(d -> SwatchesWords.distance(d, chip.spread()))
            .orElse(SwatchesWords.spread(chip.spread()));
    String told =
        chip.words() + ": " + distance + (chip.beyond() ? "; " + SwatchesWords.BEYOND : "");
    Tooltip.install(colours, new Tooltip(told));
    Label below =
        new Label(
            chip.beyond()
                ? SwatchesWords.LEFT_OUT
                : chip.distance().map("%.1f"::formatted).orElse(""));
    below.getStyleClass().addAll("small", chip.beyond() ? "warn" : "soft");
    Label above = new Label(chip.words());
    above.getStyleClass().addAll("small", "soft");
    getChildren().setAll(above, colours, below);
    setAccessibleText(told);
  }

  private static Rectangle half(Optional<Lab> colour) {
    Rectangle half = new Rectangle(WIDTH, HEIGHT);
    half.setFill(colour.map(Swatches::color).orElse(Color.TRANSPARENT));
    return half;
  }
}
