package org.panwright.app.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.Sentence;
import org.panwright.app.fx.TypedNumber;
import org.panwright.kit.FillPractice;
import org.panwright.kit.FitTolerance;
import org.panwright.kit.Stock;
import org.panwright.kit.StockEdit;
import org.panwright.words.FillViewWords;
import org.panwright.words.FillWords;

/** How the painter fills pans and how exactly they must fit, as numbers to type. */
final class HabitFields extends VBox {
  /** One number. */
  private record Habit(TextField field, StringProperty problem, ToDoubleFunction<Stock> now) {}

  private final FillModel model;
  private final List<Habit> habits = new ArrayList<>();

  HabitFields(FillModel model) {
    super(12);
    this.model = model;
    setMinWidth(300);
    setPrefWidth(320);
    FormGrid filling = new FormGrid();
    practice(
        filling, FillViewWords.FULL_HEIGHT, 5, 100, p -> 100 * p.fullHeight(), HabitFields::height);
    practice(filling, FillViewWords.LEAST_LAYERS, 1, 12, FillPractice::layers, HabitFields::layers);
    practice(filling, FillViewWords.DRYING, 0, 60, FillPractice::dryingDays, HabitFields::drying);
    practice(
        filling, FillViewWords.SHRINKAGE, 0, 80, p -> 100 * p.shrinkage(), HabitFields::shrinkage);
    practice(filling, FillViewWords.DAB, 0.01, 5, FillPractice::dabMl, HabitFields::dab);
    practice(
        filling, FillViewWords.RESERVE, 0, 100, p -> 100 * p.refillBelow(), HabitFields::reserve);
    FormGrid fitting = new FormGrid();
    row(
        fitting,
        FillViewWords.MAKES_DIFFER,
        0,
        5,
        stock -> stock.tolerance().makeMm(),
        (stock, mm) ->
            new StockEdit.SetTolerance(new FitTolerance(mm, stock.tolerance().looseMm())));
    row(
        fitting,
        FillViewWords.LOOSE_FROM,
        0,
        20,
        stock -> stock.tolerance().looseMm(),
        (stock, mm) ->
            new StockEdit.SetTolerance(new FitTolerance(stock.tolerance().makeMm(), mm)));
    Label usual = Sentence.of(FillWords.USUAL, "soft");
    getChildren()
        .setAll(
            heading(FillViewWords.HABITS),
            filling,
            heading(FillViewWords.TOLERANCE),
            fitting,
            usual);
  }

  /** Shows the kit as it is now. */
  void show() {
    for (Habit habit : habits) {
      double now = habit.now().applyAsDouble(model.stock());
      OptionalDouble typed = TypedNumber.read(habit.field().getText());
      if (typed.isEmpty() || Math.abs(typed.getAsDouble() - now) > 1e-9) {
        habit.field().setText(TypedNumber.write(now, 2));
        habit.problem().set("");
      }
    }
  }

  private void practice(
      FormGrid grid,
      String name,
      double low,
      double high,
      ToDoubleFunction<FillPractice> now,
      BiFunction<FillPractice, Double, FillPractice> changed) {
    row(
        grid,
        name,
        low,
        high,
        stock -> now.applyAsDouble(stock.practice()),
        (stock, value) -> new StockEdit.SetPractice(changed.apply(stock.practice(), value)));
  }

  private void row(
      FormGrid grid,
      String name,
      double low,
      double high,
      ToDoubleFunction<Stock> now,
      BiFunction<Stock, Double, StockEdit> edit) {
    StringProperty problem = new SimpleStringProperty("");
    TextField field =
        Typing.field(
            name,
            6,
            text -> {
              OptionalDouble typed = TypedNumber.read(text);
              boolean right =
                  typed.isPresent() && typed.getAsDouble() >= low && typed.getAsDouble() <= high;
              problem.set(right ? "" : FillViewWords.outside(name, low, high));
              if (right
                  && Math.abs(typed.getAsDouble() - now.applyAsDouble(model.stock())) > 1e-9) {
                model.perform(edit.apply(model.stock(), typed.getAsDouble()));
              }
            });
    habits.add(new Habit(field, problem, now));
    grid.row(name, field, problem);
  }

  private static FillPractice height(FillPractice p, double percent) {
    return new FillPractice(
        percent / 100, p.layers(), p.dryingDays(), p.shrinkage(), p.dabMl(), p.refillBelow());
  }

  private static FillPractice layers(FillPractice p, double layers) {
    return new FillPractice(
        p.fullHeight(),
        (int) Math.round(layers),
        p.dryingDays(),
        p.shrinkage(),
        p.dabMl(),
        p.refillBelow());
  }

  private static FillPractice drying(FillPractice p, double days) {
    return new FillPractice(
        p.fullHeight(), p.layers(), days, p.shrinkage(), p.dabMl(), p.refillBelow());
  }

  private static FillPractice shrinkage(FillPractice p, double percent) {
    return new FillPractice(
        p.fullHeight(), p.layers(), p.dryingDays(), percent / 100, p.dabMl(), p.refillBelow());
  }

  private static FillPractice dab(FillPractice p, double ml) {
    return new FillPractice(
        p.fullHeight(), p.layers(), p.dryingDays(), p.shrinkage(), ml, p.refillBelow());
  }

  private static FillPractice reserve(FillPractice p, double percent) {
    return new FillPractice(
        p.fullHeight(), p.layers(), p.dryingDays(), p.shrinkage(), p.dabMl(), percent / 100);
  }

  private static Label heading(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("part-heading");
    return label;
  }
}
