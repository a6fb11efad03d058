package org.panwright.app.choose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.Spinner;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Sentence;
import org.panwright.kit.Aim;
import org.panwright.kit.LineupWishes;
import org.panwright.kit.Outing;
import org.panwright.kit.PaintRules;
import org.panwright.kit.Weights;
import org.panwright.paint.Lightfastness;
import org.panwright.words.ChooseViewWords;
import org.panwright.words.ChooseWords;
import org.panwright.words.PaintWords;

/** What has to hold of a lineup to be proposed; every change is kept with the lineup looked at. */
final class ConditionsForm extends VBox {
  private static final int LARGEST_LIMIT = 8;
  private static final double NUMBER_WIDTH = 20;

  private final ChooseModel model;
  private final ComboBox<Optional<String>> outing = new ComboBox<>();
  private final List<Runnable> fields = new ArrayList<>();
  private boolean following;

  /**
   * @param later when what is below the first fields is built
   */
  ConditionsForm(ChooseModel model, Executor later) {
    this.model = model;
    getStyleClass().add("choose-conditions");
    Label title = new Label(ChooseViewWords.TITLE);
    title.getStyleClass().add("title");
    Label purpose = Sentence.of(ChooseViewWords.PURPOSE, "soft");
    getChildren().setAll(title, purpose, numbers());
    later.execute(() -> add(rules()));
    later.execute(() -> add(heading(ChooseViewWords.WEIGHTS), weights()));
    later.execute(this::addPaints);
    model.wishesProperty().addListener(changed -> follow());
    model.session().historyProperty().addListener(changed -> follow());
    follow();
  }

  private void add(Node... parts) {
    getChildren().addAll(parts);
    follow();
  }

  private void addPaints() {
    WishList paints = new WishList(model);
    Label heading = heading(ChooseViewWords.PAINTS);
    heading.setLabelFor(paints);
    paints.setTooltip(new Tooltip(ChooseViewWords.PAINTS_HELP));
    add(heading, paints);
  }

  private static Label heading(String text) {
    Label heading = new Label(text);
    heading.getStyleClass().add("part-heading");
    return heading;
  }

  private LineupWishes now() {
    return model.wishesProperty().get();
  }

  /** Asks something else, unless the field was only told what is asked already. */
  private void ask(UnaryOperator<LineupWishes> change) {
    if (!following) {
      model.ask(change);
    }
  }

  private FormGrid numbers() {
    FormGrid form = new FormGrid();
    form.row(
        ChooseViewWords.WELLS,
        number(
            ChooseModel.MOST_WELLS,
            LineupWishes::wells,
            wells -> ask(wishes -> wishes.withPlaces(wells, wishes.dabs()))));
    form.row(
        ChooseViewWords.DABS,
        number(
            ChooseModel.MOST_DABS,
            LineupWishes::dabs,
            dabs -> ask(wishes -> wishes.withPlaces(wishes.wells(), dabs))));
    form.row(ChooseViewWords.MOST, most());
    form.row(ChooseViewWords.FLOOR, floor());
    form.row(ChooseViewWords.OUTING, outing());
    return form;
  }

  private Spinner<Integer> number(
      int most, Function<LineupWishes, Integer> of, IntConsumer changed) {
    Spinner<Integer> spinner = new Spinner<>(0, most, of.apply(now()));
    spinner.setEditable(true);
    spinner.valueProperty().addListener((o, was, is) -> changed.accept(is));
    fields.add(() -> spinner.getValueFactory().setValue(of.apply(now())));
    return spinner;
  }

  private ComboBox<Optional<Integer>> most() {
    ComboBox<Optional<Integer>> most = new ComboBox<>();
    most.getItems().add(Optional.empty());
    for (int i = 1; i <= LARGEST_LIMIT; i++) {
      most.getItems().add(Optional.of(i));
    }
    most.setConverter(
        new ByLabel<>(
            limit -> limit.map(ChooseViewWords::atMost).orElse(ChooseViewWords.NO_LIMIT)));
    most.valueProperty().addListener((o, was, is) -> ask(wishes -> wishes.withMostOfAGroup(is)));
    fields.add(() -> most.setValue(now().mostOfAGroup()));
    return most;
  }

  private ComboBox<Optional<Lightfastness>> floor() {
    ComboBox<Optional<Lightfastness>> floor = new ComboBox<>();
    floor
        .getItems()
        .setAll(
            List.of(
                Optional.empty(),
                Optional.of(Lightfastness.I),
                Optional.of(Lightfastness.II),
                Optional.of(Lightfastness.III)));
    floor.setConverter(
        new ByLabel<>(
            f ->
                f.map(category -> ChooseViewWords.orBetter(PaintWords.mark(category)))
                    .orElse(ChooseViewWords.ANY_LIGHTFASTNESS)));
    floor
        .valueProperty()
        .addListener(
            (o, was, is) ->
                rule(r -> new PaintRules(r.ownedOnly(), r.singlePigment(), r.noCadmium(), is)));
    fields.add(() -> floor.setValue(now().rules().lightfastness()));
    return floor;
  }

  private ComboBox<Optional<String>> outing() {
    outing.setConverter(
        new ByLabel<>(
            id ->
                id.flatMap(model.session().kit()::outing)
                    .map(Outing::name)
                    .orElse(ChooseViewWords.NO_OUTING)));
    outing
        .valueProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                ask(wishes -> wishes.withOuting(is));
              }
            });
    fields.add(this::offerOutings);
    return outing;
  }

  private void offerOutings() {
    List<Optional<String>> choices = new ArrayList<>(List.of(Optional.empty()));
    model.session().kit().outings().forEach(o -> choices.add(Optional.of(o.id())));
    outing.getItems().setAll(choices);
    outing.setValue(now().outingId().filter(id -> model.session().kit().outing(id).isPresent()));
  }

  private void rule(UnaryOperator<PaintRules> change) {
    ask(wishes -> wishes.withRules(change.apply(wishes.rules())));
  }

  private VBox rules() {
    CheckBox owned = new CheckBox(ChooseViewWords.OWNED);
    CheckBox single = new CheckBox(ChooseViewWords.SINGLE);
    CheckBox noCadmium = new CheckBox(ChooseViewWords.NO_CADMIUM);
    for (CheckBox box : List.of(owned, single, noCadmium)) {
      box.setOnAction(
          event ->
              rule(
                  r ->
                      new PaintRules(
                          owned.isSelected(),
                          single.isSelected(),
                          noCadmium.isSelected(),
                          r.lightfastness())));
    }
    fields.add(
        () -> {
          owned.setSelected(now().rules().ownedOnly());
          single.setSelected(now().rules().singlePigment());
          noCadmium.setSelected(now().rules().noCadmium());
        });
    return new VBox(6, owned, single, noCadmium);
  }

  private FormGrid weights() {
    FormGrid form = new FormGrid();
    for (Aim aim : Aim.values()) {
      form.row(ChooseWords.label(aim), weight(aim));
    }
    return form;
  }

  private HBox weight(Aim aim) {
    Slider slider = new Slider(0, Weights.MOST, now().weights().of(aim));
    slider.setMajorTickUnit(1);
    slider.setMinorTickCount(0);
    slider.setSnapToTicks(true);
    slider.setBlockIncrement(1);
    Label number = new Label(figure(slider.getValue()));
    number.setMinWidth(NUMBER_WIDTH);
    Runnable weigh =
        () -> ask(w -> w.withWeights(w.weights().with(aim, Math.rint(slider.getValue()))));
    slider
        .valueProperty()
        .addListener(
            (o, was, is) -> {
              number.setText(figure(is.doubleValue()));
              if (!slider.isValueChanging()) {
                weigh.run();
              }
            });
    slider
        .valueChangingProperty()
        .addListener(
            (o, was, isChanging) -> {
              if (!isChanging) {
                weigh.run();
              }
            });
    fields.add(() -> slider.setValue(now().weights().of(aim)));
    slider.setAccessibleText(ChooseWords.label(aim));
    HBox.setHgrow(slider, Priority.ALWAYS);
    return new HBox(6, slider, number);
  }

  private static String figure(double weight) {
    return Long.toString(Math.round(weight));
  }

  private void follow() {
    following = true;
    fields.forEach(Runnable::run);
    following = false;
  }
}
