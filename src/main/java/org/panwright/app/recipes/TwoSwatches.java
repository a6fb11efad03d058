package org.panwright.app.recipes;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.Background;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.Swatches;
import org.panwright.colour.Lab;
import org.panwright.words.RecipeViewWords;

/** Two colours side by side without a gap, so that a difference is seen: wanted and mixed. */
public final class TwoSwatches extends HBox {
  public TwoSwatches(Lab wanted, Lab mixed) {
    getStyleClass().add("two-swatches");
    getChildren()
        .setAll(
            half(wanted, RecipeViewWords.TARGET, Pos.BOTTOM_LEFT),
            half(mixed, RecipeViewWords.MIX, Pos.BOTTOM_RIGHT));
  }

  private static VBox half(Lab lab, String name, Pos place) {
    Region colour = new Region();
    colour.setBackground(Background.fill(Swatches.color(lab)));
    colour.getStyleClass().add("swatch-half");
    VBox.setVgrow(colour, Priority.ALWAYS);
    Label label = new Label(name);
    label.getStyleClass().addAll("soft", "small");
    VBox half = new VBox(colour, label);
    half.setAlignment(place);
    HBox.setHgrow(half, Priority.ALWAYS);
    half.setPrefWidth(40);
    return half;
  }
}
