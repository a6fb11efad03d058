package org.panwright.app.spots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.InPlace;
import org.panwright.app.fx.Sentence;
import org.panwright.app.swatches.CardFields;
import org.panwright.app.swatches.Foot;
import org.panwright.app.swatches.PaintChoice;
import org.panwright.app.swatches.PictureMarks;
import org.panwright.app.swatches.ReadingWay;
import org.panwright.app.swatches.Remarks;
import org.panwright.app.swatches.StirredFields;
import org.panwright.app.swatches.WayWords;
import org.panwright.app.swatches.WorkBar;
import org.panwright.swatch.spot.SpotKind;
import org.panwright.words.SpotsWords;
import org.panwright.words.SwatchesWords;

/** Spots placed by hand beside their picture: the next one, those there are, what is learnt. */
public final class SpotsSide implements ReadingWay {
  /** What it says of itself. */
  public static final WayWords WORDS =
      new WayWords(SpotsWords.NAME, SpotsWords.PURPOSE, SpotsWords.EMPTY, SpotsWords.HINT);

  private final SpotsModel model;
  private final PaintChoice nextPaint;
  private final Slider size = new Slider(4, 100, 20);
  private final StirredFields stirred;
  private final Label problem = Sentence.whileSaid("warn");
  private final Remarks remarks = new Remarks();
  private final Label legend = Sentence.of(SwatchesWords.READ_AND_MODEL, "soft", "small");
  private final VBox rows = new VBox(8);
  private final VBox content = new VBox(12);
  private final Foot foot;
  private boolean filling;

  public SpotsSide(SpotsModel model) {
    this.model = model;
    nextPaint =
        new PaintChoice(
            Optional.of(SpotsWords.NO_PAINT), id -> model.marks().nextPaintProperty().set(id));
    stirred = new StirredFields(model.choicesProperty(), model::paints);
    WorkBar work = new WorkBar(model.shareProperty(), model::leaveOff, model::takeUp);
    foot = new Foot(work, SwatchesWords.KEEP, this::keep);
    content.getChildren().setAll(form(), problem, remarks, legend, rows);
    legend.managedProperty().bind(legend.visibleProperty());
    model.stateProperty().addListener((property, before, now) -> show(now));
    model.marks().whenChanged(() -> show(model.stateProperty().get()));
    show(model.stateProperty().get());
  }

  @Override
  public WayWords words() {
    return WORDS;
  }

  @Override
  public PictureMarks marks() {
    return model.marks();
  }

  @Override
  public Region content() {
    return content;
  }

  @Override
  public Region foot() {
    return foot;
  }

  @Override
  public void setChosen(boolean chosen) {
    foot.say("");
    model.setChosen(chosen);
  }

  private VBox form() {
    Label heading = new Label(SpotsWords.NEXT);
    heading.getStyleClass().add("pane-title");
    ChoiceBox<SpotKind> kind = new ChoiceBox<>();
    kind.getItems().setAll(SpotKind.values());
    kind.setConverter(new ByLabel<>(SpotsWords::kind));
    kind.valueProperty().bindBidirectional(model.marks().nextKindProperty());
    nextPaint.disableProperty().bind(kind.valueProperty().map(k -> !k.isCoat()));
    size.valueProperty()
        .addListener(
            (property, before, now) -> {
              if (!filling) {
                model.marks().resize(now.doubleValue());
              }
            });
    FormGrid form = new FormGrid();
    form.row(SpotsWords.KIND, kind);
    form.row(SpotsWords.PAINT, nextPaint);
    form.row(SpotsWords.SIZE, size);
    CardFields card = new CardFields(model.cardProperty());
    form.row(SpotsWords.CARD, card, card.problemProperty());
    stirred.addTo(form);
    return new VBox(8, heading, form);
  }

  private void show(SpotsState state) {
    nextPaint.show(model.paints(), model.marks().nextPaintProperty().get());
    stirred.show();
    filling = true;
    size.setMax(model.marks().mostSidePx());
    size.setValue(model.marks().sidePx());
    filling = false;
    String why =
        state.needsPaper()
            ? SpotsWords.NEEDS_PAPER
            : state
                .fault()
                .map(fault -> SpotsWords.NO_PAPER)
                .orElseGet(() -> SwatchesWords.problem(Optional.empty(), state.refusal()));
    problem.setText(why);
    remarks.show(state.remarks());
    legend.setVisible(state.rows().stream().anyMatch(row -> row.chip().isPresent()));
    showRows(state.rows());
    foot.show(state.stage());
    foot.allow(model.canKeep());
  }

  /** As many rows as there are spots; those there are already keep the keyboard. */
  private void showRows(List<SpotsState.Row> all) {
    List<Node> lines = new ArrayList<>(rows.getChildren());
    while (lines.size() > all.size()) {
      lines.remove(lines.size() - 1);
    }
    while (lines.size() < all.size()) {
      lines.add(new SpotRow(lines.size(), model));
    }
    InPlace.arrange(rows.getChildren(), lines);
    for (int i = 0; i < all.size(); i++) {
      ((SpotRow) lines.get(i)).show(all.get(i), model.marks().pickedProperty().get() == i);
    }
  }

  private void keep() {
    int paints = model.coats().size();
    model.keep();
    foot.say(SwatchesWords.kept(paints));
  }
}
