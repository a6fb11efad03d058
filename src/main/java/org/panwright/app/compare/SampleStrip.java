package org.panwright.app.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.CornerRadii;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.panwright.app.fx.Swatches;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.words.ColourWords;
import org.panwright.words.CompareWords;

/**
 * Colours only one lineup mixes, of which one is picked by mouse or left and right; Enter opens.
 */
final class SampleStrip extends FlowPane {
  private static final PseudoClass PICKED = PseudoClass.getPseudoClass("picked");
  private static final double SWATCH = 20;

  private final List<Lab> colours;
  private final List<Region> frames = new ArrayList<>();
  private final List<String> words;
  private final BiConsumer<Lab, String> picked;
  private int at = -1;

  /**
   * @param lineup the one that mixes them
   * @param picked told the colour that is picked, and its name
   * @param open shows what is picked large
   */
  SampleStrip(List<Lab> colours, String lineup, BiConsumer<Lab, String> picked, Runnable open) {
    super(3, 3);
    this.colours = List.copyOf(colours);
    this.picked = picked;
    words = colours.stream().map(colour -> CompareWords.sample(looks(colour), lineup)).toList();
    getStyleClass().add("sample-strip");
    Label whose = new Label(lineup);
    whose.getStyleClass().addAll("soft", "small");
    getChildren().add(whose);
    for (int i = 0; i < colours.size(); i++) {
      getChildren().add(frame(i, open));
    }
    setFocusTraversable(true);
    setAccessibleText(CompareWords.samples(colours.size(), lineup));
    setOnKeyPressed(event -> act(event, open));
  }

  private Region frame(int place, Runnable open) {
    Region swatch = new Region();
    swatch.setMinSize(SWATCH, SWATCH);
    swatch.setBackground(
        new Background(
            new BackgroundFill(
                Swatches.color(colours.get(place)), new CornerRadii(2), Insets.EMPTY)));
    StackPane frame = new StackPane(swatch);
    frame.getStyleClass().add("sample");
    Tooltip.install(frame, new Tooltip(words.get(place)));
    frame.setOnMouseClicked(
        event -> {
          requestFocus();
          pick(place);
          if (event.getClickCount() == 2) {
            open.run();
          }
        });
    frames.add(frame);
    return frame;
  }

  private void act(KeyEvent event, Runnable open) {
    switch (event.getCode()) {
      case LEFT -> pick(Math.max(0, at - 1));
      case RIGHT -> pick(Math.min(colours.size() - 1, at + 1));
      case ENTER -> {
        if (at < 0) {
          return;
        }
        open.run();
      }
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void pick(int place) {
    at = place;
    for (int i = 0; i < frames.size(); i++) {
      frames.get(i).pseudoClassStateChanged(PICKED, i == at);
    }
    setAccessibleText(words.get(at));
    picked.accept(colours.get(at), words.get(at));
  }

  private static String looks(Lab colour) {
    return ColourWords.describe(Oklab.ofD65(colour.toXyz(Light.D65.white())).toOklch());
  }
}
