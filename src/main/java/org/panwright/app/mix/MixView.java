package org.panwright.app.mix;

import java.util.Arrays;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.Sentence;
import org.panwright.app.fx.Swatches;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.colour.Oklch;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Wash;
import org.panwright.words.ColourWords;
import org.panwright.words.MixWords;
import org.panwright.words.PaintWords;
import org.panwright.words.RecipeViewWords;

/**
 * The picked mix large, in all its ratios and washes, with recipe, reflectance and how far to trust
 * it.
 */
public final class MixView extends VBox {
  private static final List<String> RATIO_NAMES =
      Ratio.GRID.stream().map(r -> MixWords.ratio(r.first(), r.second())).toList();
  private static final List<String> WASH_NAMES =
      Arrays.stream(Wash.values()).map(wash -> PaintWords.label(wash)).toList();

  private final Label title = Sentence.of("", "pane-title");
  private final Label looks = Sentence.of("", "soft");
  private final WetAndDry large = new WetAndDry();
  private final SwatchStrip ratios;
  private final VBox ratioPart;
  private final SwatchStrip washes;
  private final Label recipe = Sentence.of("");
  private final ReflectanceCurve curve = new ReflectanceCurve();
  private final Label figures = Sentence.of("");
  private final Label trust = Sentence.of("");

  public MixView(MixModel model) {
    getStyleClass().addAll("pane", "mix-view");
    ratios = new SwatchStrip(model::chooseRatio);
    washes = new SwatchStrip(place -> model.washProperty().set(Wash.values()[place]));
    ratioPart = part(MixWords.RATIOS, ratios);
    trust.getStyleClass().add("soft");
    Button back = new Button(MixWords.BACK);
    back.setCancelButton(false);
    back.setOnAction(e -> model.leave());
    back.setMinWidth(Region.USE_PREF_SIZE);
    HBox.setHgrow(title, Priority.ALWAYS);
    title.setMaxWidth(Double.MAX_VALUE);
    HBox head = new HBox(title, back);
    head.getStyleClass().add("pane-head");
    head.setAlignment(Pos.TOP_LEFT);
    Button others = new Button(RecipeViewWords.OTHER_WAYS);
    others.setOnAction(e -> model.otherWays());
    VBox content =
        new VBox(
            looks,
            large,
            ratioPart,
            part(MixWords.WASHES, washes),
            part(MixWords.RECIPE, recipe),
            others,
            part(MixWords.REFLECTANCE, curve),
            figures,
            trust);
    content.getStyleClass().add("mix-content");
    ScrollPane scroll = new ScrollPane(content);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("edge-to-edge");
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(head, scroll);
    model.pictureProperty().addListener((o, before, now) -> now.ifPresent(this::show));
    model.pictureProperty().getValue().ifPresent(this::show);
  }

  private void show(MixPicture mix) {
    title.setText(mix.alone() ? mix.first() : MixWords.pair(mix.first(), mix.second()));
    Oklch dry = Oklab.ofD65(mix.dry().toXyz(Light.D65.white())).toOklch();
    String look = ColourWords.describe(dry);
    looks.setText(Swatches.fit(mix.dry()).exact() ? look : MixWords.beyondScreen(look));
    large.show(mix.dry(), mix.wet());
    large.setAccessibleText(looks.getText());
    ratioPart.setVisible(!mix.alone());
    ratioPart.setManaged(!mix.alone());
    if (!mix.alone()) {
      ratios.show(mix.ratios(), RATIO_NAMES, mix.ratio());
    }
    washes.show(mix.washes(), WASH_NAMES, mix.wash().ordinal());
    curve.show(mix.reflectance());
    recipe.setText(
        mix.alone()
            ? MixWords.alone(PaintWords.label(mix.wash()))
            : MixWords.recipe(
                mix.first(),
                mix.second(),
                Ratio.GRID.get(mix.ratio()),
                mix.firstVolume(),
                PaintWords.label(mix.wash())));
    figures.setText(MixWords.figures(mix.dry(), dry));
    trust.setText(
        MixWords.trust(
            mix.expectedError(), mix.sources().stream().map(PaintWords::badge).toList()));
  }

  private static VBox part(String heading, Node content) {
    Label label = new Label(heading);
    label.getStyleClass().add("part-heading");
    VBox part = new VBox(label, content);
    part.getStyleClass().add("part");
    return part;
  }
}
