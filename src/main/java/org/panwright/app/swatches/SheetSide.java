package org.panwright.app.swatches;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.InPlace;
import org.panwright.app.fx.Sentence;
import org.panwright.words.SpotsWords;
import org.panwright.words.SwatchesWords;

/** What was read off a printed sheet, and the sheet to print. */
public final class SheetSide implements ReadingWay {
  private static final WayWords WORDS =
      new WayWords(
          SwatchesWords.PRINTED, SwatchesWords.PURPOSE, SwatchesWords.EMPTY, SwatchesWords.CORNERS);

  private final SheetModel model;
  private final StirredFields stirred;
  private final Label problem = Sentence.whileSaid("warn");
  private final Remarks remarks = new Remarks();
  private final Label legend = Sentence.of(SwatchesWords.READ_AND_MODEL, "soft", "small");
  private final VBox rows = new VBox(10);
  private final Map<Integer, RowCard> cards = new HashMap<>();
  private final VBox content = new VBox(12);
  private final Foot foot;

  public SheetSide(SheetModel model, BlankSheet blank, Dialogs dialogs) {
    this.model = model;
    stirred = new StirredFields(model.choicesProperty(), model::paints);
    WorkBar work = new WorkBar(model.shareProperty(), model::leaveOff, model::takeUp);
    foot = new Foot(work, SwatchesWords.KEEP, this::keep);
    content
        .getChildren()
        .setAll(
            form(),
            problem,
            remarks,
            legend,
            rows,
            new BlankSheetPart(model, blank, dialogs, foot::say));
    legend.managedProperty().bind(legend.visibleProperty());
    model
        .stateProperty()
        .addListener(
            (property, before, now) -> {
              if (!before.reading().equals(now.reading())) {
                foot.say("");
              }
              show(now);
            });
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

  private FormGrid form() {
    ChoiceBox<Boolean> state = new ChoiceBox<>();
    state.getItems().setAll(false, true);
    state.setConverter(new ByLabel<>(SwatchesWords::state));
    state.setValue(false);
    state
        .valueProperty()
        .addListener(
            (property, before, now) ->
                model.choicesProperty().set(model.choicesProperty().get().withWet(now)));
    FormGrid form = new FormGrid();
    form.row(SwatchesWords.STATE, state);
    CardFields share = new CardFields(model.cardProperty());
    form.row(SpotsWords.CARD, card(share), share.problemProperty());
    stirred.addTo(form);
    return form;
  }

  private VBox card(CardFields share) {
    SheetMarks marks = model.marks();
    CheckBox lies = new CheckBox(SwatchesWords.CARD_LIES);
    lies.setWrapText(true);
    lies.selectedProperty().bindBidirectional(marks.cardLiesProperty());
    Label place = Sentence.of(SwatchesWords.CARD_PLACE, "soft");
    place
        .visibleProperty()
        .bind(
            lies.selectedProperty()
                .and(
                    Bindings.createBooleanBinding(
                        () -> marks.cardProperty().get().isEmpty(), marks.cardProperty())));
    share.visibleProperty().bind(lies.selectedProperty());
    for (Node part : List.of(place, share)) {
      part.managedProperty().bind(part.visibleProperty());
    }
    return new VBox(6, lies, share, place);
  }

  private void show(SheetState state) {
    stirred.show();
    problem.setText(SwatchesWords.problem(state.fault(), state.refusal()));
    showRemarks(state);
    legend.setVisible(!state.rows().isEmpty());
    cards.keySet().retainAll(state.rows().stream().map(row -> row.reading().row()).toList());
    List<RowCard> wanted = new ArrayList<>();
    for (SheetRow row : state.rows()) {
      RowCard card = cards.computeIfAbsent(row.reading().row(), n -> new RowCard(n, model));
      card.show(row);
      wanted.add(card);
    }
    InPlace.arrange(rows.getChildren(), wanted);
    foot.show(state.stage());
    foot.allow(model.canKeep());
  }

  private void showRemarks(SheetState state) {
    remarks.show(state.remarks());
    state
        .swapped()
        .ifPresent(
            s -> {
              Button exchange = new Button(SwatchesWords.EXCHANGE);
              exchange.setOnAction(event -> model.exchange(s.first(), s.second()));
              remarks.add(exchange);
            });
  }

  private void keep() {
    int paints =
        (int)
            model.stateProperty().get().rows().stream()
                .filter(row -> row.paintId().isPresent())
                .count();
    model.keep();
    foot.say(SwatchesWords.kept(paints));
  }
}
