package org.panwright.app.fill;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.Form;
import org.panwright.app.fx.Parted;
import org.panwright.kit.PanKind;
import org.panwright.words.FillViewWords;
import org.panwright.words.FillWords;
import org.panwright.words.FitWords;

/** The kinds of pans, and how the painter fills them. */
final class PansPart extends HBox implements Parted {
  private final FillModel model;
  private final Dialogs dialogs;
  private final TextTable<PanKind> pans;
  private final HabitFields habits;

  PansPart(FillModel model, Dialogs dialogs) {
    super(24);
    this.model = model;
    this.dialogs = dialogs;
    getStyleClass().add("fill-part");
    pans =
        new TextTable<PanKind>(FillViewWords.PANS, "")
            .words(FillViewWords.NAME, 200, PanKind::name)
            .words(FillViewWords.OUTSIDE, 140, pan -> FillWords.extent(pan.outer()))
            .words(FillViewWords.INSIDE, 140, pan -> FillWords.extent(pan.inner()))
            .figures(FillViewWords.TO_BRIM, 100, PanKind::brimMl, p -> FillWords.ml(p.brimMl()));
    VBox.setVgrow(pans, Priority.ALWAYS);
    pans.setOnMouseClicked(
        event -> {
          if (event.getClickCount() == 2) {
            change();
          }
        });
    pans.setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ENTER) {
            change();
          } else if (event.getCode() == KeyCode.DELETE) {
            remove();
          }
        });
    Label usual = new Label(FitWords.USUAL);
    usual.getStyleClass().add("soft");
    VBox left = new VBox(10, bar(), pans, usual);
    HBox.setHgrow(left, Priority.ALWAYS);
    habits = new HabitFields(model);
    getChildren().setAll(left, habits);
  }

  @Override
  public List<Node> parts() {
    return List.copyOf(getChildren());
  }

  /** Shows the kit as it is now. */
  void show() {
    Optional<String> picked = picked().map(PanKind::id);
    pans.getItems().setAll(model.stock().pans());
    picked.flatMap(model.stock()::pan).ifPresent(pan -> pans.getSelectionModel().select(pan));
    habits.show();
  }

  private HBox bar() {
    Button add = new Button(FillViewWords.ADD_PAN);
    add.setOnAction(event -> add());
    Button change = new Button(FillViewWords.CHANGE);
    change.setOnAction(event -> change());
    Button remove = new Button(FillViewWords.REMOVE);
    remove.setOnAction(event -> remove());
    for (Button button : List.of(change, remove)) {
      button.disableProperty().bind(pans.getSelectionModel().selectedItemProperty().isNull());
    }
    return new HBox(8, add, change, remove);
  }

  private void add() {
    PanKind like = picked().orElse(model.stock().pans().get(0));
    ask(FillViewWords.NEW_PAN, FillViewWords.ADD, PanDraft.of(like)).ifPresent(model::addPan);
  }

  private void change() {
    picked()
        .ifPresent(
            pan ->
                ask(FillViewWords.CHANGE_PAN, FillViewWords.KEEP, PanDraft.of(pan))
                    .ifPresent(draft -> model.changePan(pan.id(), draft)));
  }

  private void remove() {
    picked()
        .ifPresent(
            pan -> {
              if (FillModel.isNeeded(pan.id())) {
                dialogs.tell(FillViewWords.CHANGE_PAN, FillViewWords.STILL_NEEDED);
              } else {
                model.removePan(pan.id());
              }
            });
  }

  private Optional<PanDraft> ask(String title, String accept, PanDraft start) {
    PanForm form = new PanForm(start);
    return dialogs.fillIn(
        new Form<>(title, form, accept, form.ready(), form::draft, form.firstField()));
  }

  private Optional<PanKind> picked() {
    return Optional.ofNullable(pans.getSelectionModel().getSelectedItem());
  }
}
