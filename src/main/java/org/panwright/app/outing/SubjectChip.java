package org.panwright.app.outing;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Rectangle;
import org.panwright.app.fx.Swatches;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.kit.SubjectColour;
import org.panwright.words.ColourWords;

/** A subject colour on neutral grey, with its name; its hue word in the tip. */
final class SubjectChip extends HBox {
  SubjectChip(SubjectColour subject) {
    super(6);
    Rectangle colour = new Rectangle(26, 18, Swatches.color(subject.lab()));
    StackPane ground = new StackPane(colour);
    ground.getStyleClass().addAll("swatch-ground", "chip-ground");
    Label name = new Label(subject.name());
    String hue =
        ColourWords.describe(Oklab.ofD65(subject.lab().toXyz(Light.D65.white())).toOklch());
    name.setTooltip(new Tooltip(hue));
    name.setMaxWidth(190);
    setAccessibleText(subject.name() + ", " + hue);
    setAlignment(Pos.CENTER_LEFT);
    getChildren().setAll(ground, name);
  }
}
