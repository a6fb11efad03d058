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
  private final SheetModel model;
  private final StirredFields stirred;
  private final Label problem = Sentence.of("", "warn");
  private final VBox remarks = new VBox(6);
  private final Label legend = Sentence.of(SwatchesWords.READ_AND_MODEL, "soft", "small");
  private final VBox rows = new VBox(10);
  private final Map<Integer, RowCard> cards = new HashMap<>();
  private final Label status = Sentence.of("");
  private final WorkBar work;
  private final Button keep = new Button(SwatchesWords.KEEP);
  private final VBox content = new VBox(12);
  private final VBox foot;

  public SheetSide(SheetModel model, BlankSheet blank, Dialogs dialogs) {
    this.model = model;
    stirred = new StirredFields(model.choicesProperty(), model::paints);
    work = new WorkBar(model.shareProperty(), model::leaveOff, model::takeUp);
    foot = new VBox(8, work, Foot.of(keep, status));
    content
        .getChildren()
        .setAll(
            form(),
            problem,
            remarks,
            legend,
            rows,
            new BlankSheetPart(model, blank, dialogs, status::setText));
    for (Node part : List.of(problem, remarks, legend)) {
      part.managedProperty().bind(part.visibleProperty());
    }
    keep.getStyleClass().add("primary");
    keep.setOnAction(event -> keep());
    model
        .stateProperty()
        .addListener(
            (property, before, now) -> {
              if (!before.reading().equals(now.reading())) {
                status.setText("");
              }
              show(now);
            });
    show(model.stateProperty().get());
  }

  @Override
  public String name() {
    return SwatchesWords.PRINTED;
  }

  @Override
  public String purpose() {
    return SwatchesWords.PURPOSE;
  }

  @Override
  public String empty() {
    return SwatchesWords.EMPTY;
  }

  @Override
  public String hint() {
    return SwatchesWords.CORNERS;
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
    status.setText("");
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
    String why = SwatchesWords.problem(state.fault(), state.refusal());
    problem.setText(why);
    problem.setVisible(!why.isEmpty());
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
    switch (state.stage()) {
      case DONE -> work.hide();
      case RUNNING -> work.run(SwatchesWords.FITTING);
      case LEFT_OFF -> work.leftOff(SwatchesWords.LEFT_OFF, SwatchesWords.LEARN);
    }
    keep.setDisable(!model.canKeep());
  }

  private void showRemarks(SheetState state) {
    remarks.getChildren().clear();
    for (String remark : state.remarks()) {
      remarks.getChildren().add(Sentence.of(remark, "warn"));
    }
    state
        .swapped()
        .ifPresent(
            s -> {
              Button exchange = new Button(SwatchesWords.EXCHANGE);
              exchange.setOnAction(event -> model.exchange(s.first(), s.second()));
              remarks.getChildren().add(exchange);
            });
    remarks.setVisible(!remarks.getChildren().isEmpty());
  }

  private void keep() {
    int paints =
        (int)
            model.stateProperty().get().rows().stream()
                .filter(row -> row.paintId().isPresent())
                .count();
    model.keep();
    status.setText(SwatchesWords.kept(paints));
  }
}
