package org.panwright.app.papers;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Spinner;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.print.PaperFormat;
import org.panwright.print.PaperOrder;
import org.panwright.words.PaperViewWords;
import org.panwright.words.PaperWords;

/**
 * Fields that change one order; its paper is among them always.
 *
 * @param <O> the kind of order
 */
class OrderFields<O extends PaperOrder> extends VBox {
  private final Class<O> type;
  private final O first;
  private final PapersModel model;
  private final FormGrid form = new FormGrid();

  OrderFields(Class<O> type, O order, PapersModel model) {
    super(14);
    this.type = type;
    this.model = model;
    first = order;
    getChildren().add(form);
    choice(
        PaperViewWords.PAPER,
        PaperFormat.values(),
        format -> PaperWords.format(format.name()),
        PaperOrder::paper,
        (o, format) -> type.cast(o.withPaper(format)));
  }

  /** One of a few values. */
  final <E> void choice(
      String label,
      E[] values,
      Function<E, String> words,
      Function<O, E> read,
      BiFunction<O, E, O> write) {
    ChoiceBox<E> box = new ChoiceBox<>();
    box.getItems().setAll(List.of(values));
    box.setConverter(new ByLabel<>(words));
    box.setValue(read.apply(first));
    box.valueProperty()
        .addListener((property, before, now) -> change(order -> write.apply(order, now)));
    form.row(label, box);
  }

  /** A whole number. */
  final void number(
      String label,
      int least,
      int most,
      Function<O, Integer> read,
      BiFunction<O, Integer, O> write) {
    Spinner<Integer> spinner = new Spinner<>(least, most, read.apply(first));
    spinner.setEditable(true);
    spinner
        .valueProperty()
        .addListener((property, before, now) -> change(order -> write.apply(order, now)));
    form.row(label, spinner);
  }

  /** Yes or no. */
  final CheckBox tick(String label, Function<O, Boolean> read, BiFunction<O, Boolean, O> write) {
    CheckBox box = new CheckBox(label);
    box.setWrapText(true);
    box.setSelected(read.apply(first));
    box.selectedProperty()
        .addListener((property, before, now) -> change(order -> write.apply(order, now)));
    getChildren().add(box);
    return box;
  }

  /** A field of its own. */
  final FormGrid form() {
    return form;
  }

  /** Changes the order as it is now. */
  final void change(UnaryOperator<O> change) {
    model.change(change.apply(type.cast(model.order(first.kind()))));
  }
}
