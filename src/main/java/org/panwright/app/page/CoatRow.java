package org.panwright.app.page;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Rectangle;
import org.panwright.app.fx.Sentence;
import org.panwright.app.fx.Swatches;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.words.PaintPageWords;

/** One coat: painted beside predicted, what it is, how far they are apart. */
final class CoatRow extends HBox {
  private static final double WIDTH = 62;
  private static final double HEIGHT = 40;

  CoatRow(PaintPage.Line line, Runnable remove) {
    getStyleClass().add("coat-row");
    setAlignment(Pos.CENTER_LEFT);
    Label name = Sentence.of(PaintPageWords.coat(line.coat()));
    Label from = Sentence.of(PaintPageWords.read(line.coat()));
    from.getStyleClass().addAll("soft", "small");
    Label off =
        Sentence.of(
            line.fit()
                .map(fit -> PaintPageWords.difference(fit.ciede2000()))
                .orElse(PaintPageWords.unknownPartner()));
    VBox words = new VBox(2, name, from, off);
    HBox.setHgrow(words, Priority.ALWAYS);
    Button away = new Button(PaintPageWords.REMOVE);
    away.getStyleClass().add("quiet");
    away.setAccessibleText(PaintPageWords.REMOVE + " " + name.getText());
    away.setMinWidth(Region.USE_PREF_SIZE);
    away.setOnAction(event -> remove.run());
    getChildren().setAll(chips(line), words, away);
  }

  /** The two touch, so that a difference shows as an edge. */
  private static Node chips(PaintPage.Line line) {
    HBox pair = new HBox(chip(line.coat().dry().lab()));
    line.fit().ifPresent(fit -> pair.getChildren().add(chip(Light.D65.lab(fit.predicted()))));
    StackPane ground = new StackPane(pair);
    ground.getStyleClass().addAll("swatch-ground", "coat-chips");
    ground.setMinWidth(Region.USE_PREF_SIZE);
    return ground;
  }

  private static Rectangle chip(Lab lab) {
    Rectangle chip = new Rectangle(WIDTH, HEIGHT);
    chip.setFill(Swatches.color(lab));
    return chip;
  }
}
