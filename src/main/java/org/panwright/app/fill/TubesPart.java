package org.panwright.app.fill;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.Form;
import org.panwright.app.fx.Parted;
import org.panwright.app.fx.Sentence;
import org.panwright.kit.FillPractice;
import org.panwright.kit.PanKind;
import org.panwright.kit.Tube;
import org.panwright.words.FillViewWords;
import org.panwright.words.FillWords;

/** The tubes there are, to be added, changed and removed. */
final class TubesPart extends VBox implements Parted {
  private final FillModel model;
  private final Dialogs dialogs;
  private final TextTable<Tube> table;
  private final TextField currency;

  TubesPart(FillModel model, Dialogs dialogs) {
    super(10);
    this.model = model;
    this.dialogs = dialogs;
    getStyleClass().add("fill-part");
    table =
        new TextTable<Tube>(FillViewWords.TUBES, FillViewWords.NO_TUBES)
            .words(FillViewWords.PAINT, 200, tube -> FillWords.paint(tube.paintId(), model.kit()))
            .figures(FillViewWords.SIZE, 70, Tube::sizeMl, tube -> FillWords.ml(tube.sizeMl()))
            .figures(FillViewWords.LEFT, 80, Tube::leftMl, tube -> FillWords.ml(tube.leftMl()))
            .figures(FillViewWords.GIVES, 120, this::gives, t -> FillWords.fills(gives(t)))
            .figures(FillViewWords.PRICE, 110, t -> t.price().orElse(-1), this::price)
            .figures(FillViewWords.A_FILL, 110, t -> t.pricePerMl().orElse(-1), this::fillPrice)
            .words(FillViewWords.OPENED, 100, t -> t.opened().map(Object::toString).orElse("–"))
            .words(FillViewWords.NOTE, 180, Tube::note);
    VBox.setVgrow(table, Priority.ALWAYS);
    table.setOnMouseClicked(
        event -> {
          if (event.getClickCount() == 2) {
            change();
          }
        });
    table.setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ENTER) {
            change();
          } else if (event.getCode() == KeyCode.DELETE) {
            remove();
          }
        });
    currency =
        Typing.field(
            FillViewWords.CURRENCY,
            8,
            text -> {
              if (!text.strip().equals(model.stock().currency())) {
                model.setCurrency(text);
              }
            });
    getChildren().setAll(bar(), table, Sentence.of(FillWords.USUAL, "soft"));
  }

  @Override
  public List<Node> parts() {
    return List.copyOf(getChildren());
  }

  /** Shows the kit as it is now. */
  void show() {
    Optional<String> picked = picked().map(Tube::id);
    table.getItems().setAll(model.stock().tubes());
    table.sort();
    picked.flatMap(model.stock()::tube).ifPresent(tube -> table.getSelectionModel().select(tube));
    if (!currency.isFocused()) {
      currency.setText(model.stock().currency());
    }
  }

  private HBox bar() {
    Button add = new Button(FillViewWords.ADD_TUBE);
    add.setOnAction(event -> add());
    Button change = new Button(FillViewWords.CHANGE);
    change.setOnAction(event -> change());
    Button remove = new Button(FillViewWords.REMOVE);
    remove.setOnAction(event -> remove());
    for (Button button : List.of(change, remove)) {
      button.disableProperty().bind(table.getSelectionModel().selectedItemProperty().isNull());
    }
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    Label name = new Label(FillViewWords.CURRENCY);
    name.getStyleClass().add("soft");
    name.setLabelFor(currency);
    HBox bar = new HBox(8, add, change, remove, gap, name, currency);
    bar.setAlignment(Pos.CENTER_LEFT);
    return bar;
  }

  private void add() {
    if (model.kit().shelf().paints().isEmpty()) {
      dialogs.tell(FillViewWords.NEW_TUBE, FillViewWords.NO_PAINTS);
      return;
    }
    String paint = picked().map(Tube::paintId).orElse("");
    ask(FillViewWords.NEW_TUBE, FillViewWords.ADD, TubeDraft.fresh(paint)).ifPresent(model::add);
  }

  private void change() {
    picked()
        .ifPresent(
            tube ->
                ask(FillViewWords.CHANGE_TUBE, FillViewWords.KEEP, TubeDraft.of(tube))
                    .ifPresent(draft -> model.change(tube.id(), draft)));
  }

  private void remove() {
    picked().ifPresent(tube -> model.remove(tube.id()));
  }

  private Optional<TubeDraft> ask(String title, String accept, TubeDraft start) {
    TubeForm form = new TubeForm(model.kit().shelf(), start, model.today());
    Node first = form.firstField();
    return dialogs.fillIn(new Form<>(title, form, accept, form.ready(), form::draft, first));
  }

  private Optional<Tube> picked() {
    return Optional.ofNullable(table.getSelectionModel().getSelectedItem());
  }

  private double gives(Tube tube) {
    return tube.leftMl() / halfPanMl();
  }

  private double halfPanMl() {
    FillPractice practice = model.stock().practice();
    PanKind half = model.stock().pan(PanKind.HALF_ID).orElseThrow();
    return practice.wetMl(half.ml(practice.fullHeight()));
  }

  private String price(Tube tube) {
    return tube.price().isPresent()
        ? FillWords.money(tube.price().getAsDouble(), model.stock().currency())
        : "–";
  }

  private String fillPrice(Tube tube) {
    return tube.pricePerMl().isPresent()
        ? FillWords.money(tube.pricePerMl().getAsDouble() * halfPanMl(), model.stock().currency())
        : "–";
  }
}
