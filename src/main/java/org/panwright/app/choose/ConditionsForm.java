package org.panwright.app.choose;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.Spinner;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.analysis.Aim;
import org.panwright.analysis.Conditions;
import org.panwright.analysis.Weights;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.kit.Outing;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Paint;
import org.panwright.words.ChooseViewWords;
import org.panwright.words.ChooseWords;
import org.panwright.words.PaintWords;

/** What has to hold of a lineup to be proposed. */
final class ConditionsForm extends VBox {
  private static final int LARGEST_LIMIT = 8;
  private static final double NUMBER_WIDTH = 20;

  private final ChooseModel model;
  private final VBox paints = new VBox(3);
  private final ComboBox<Optional<Outing>> outing = new ComboBox<>();

  ConditionsForm(ChooseModel model) {
    this.model = model;
    getStyleClass().add("choose-conditions");
    Label title = new Label(ChooseViewWords.TITLE);
    title.getStyleClass().add("title");
    Label purpose = new Label(ChooseViewWords.PURPOSE);
    purpose.getStyleClass().add("soft");
    purpose.setWrapText(true);
    purpose.setMinHeight(Region.USE_PREF_SIZE);
    getChildren().setAll(title, purpose, numbers(), rules(), heading(ChooseViewWords.WEIGHTS));
    getChildren().add(weights());
    getChildren().addAll(heading(ChooseViewWords.PAINTS), paints);
    model.session().historyProperty().addListener(changed -> follow());
    model.session().lineupProperty().addListener(changed -> follow());
    follow();
  }

  private static Label heading(String text) {
    Label heading = new Label(text);
    heading.getStyleClass().add("part-heading");
    return heading;
  }

  private Conditions now() {
    return model.conditionsProperty().get();
  }

  private void change(UnaryOperator<Conditions> change) {
    model.conditionsProperty().set(change.apply(now()));
  }

  private FormGrid numbers() {
    Spinner<Integer> wells = new Spinner<>(0, ChooseModel.MOST_WELLS, now().wells());
    Spinner<Integer> dabs = new Spinner<>(0, ChooseModel.MOST_DABS, now().dabs());
    wells.setEditable(true);
    dabs.setEditable(true);
    wells.valueProperty().addListener((o, was, is) -> change(c -> places(c, is, c.dabs())));
    dabs.valueProperty().addListener((o, was, is) -> change(c -> places(c, c.wells(), is)));
    ComboBox<Optional<Integer>> most = new ComboBox<>();
    most.getItems().add(Optional.empty());
    for (int i = 1; i <= LARGEST_LIMIT; i++) {
      most.getItems().add(Optional.of(i));
    }
    most.setConverter(
        new ByLabel<>(
            limit -> limit.map(ChooseViewWords::atMost).orElse(ChooseViewWords.NO_LIMIT)));
    most.setValue(now().mostOfAGroup());
    most.valueProperty().addListener((o, was, is) -> change(c -> c.withMostOfAGroup(is)));
    outing.setConverter(new ByLabel<>(o -> o.map(Outing::name).orElse(ChooseViewWords.NO_OUTING)));
    outing
        .valueProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                change(c -> c.withSubjects(is.map(Outing::subjects).orElse(List.of())));
              }
            });
    FormGrid form = new FormGrid();
    form.row(ChooseViewWords.WELLS, wells);
    form.row(ChooseViewWords.DABS, dabs);
    form.row(ChooseViewWords.MOST, most);
    form.row(ChooseViewWords.FLOOR, floor());
    form.row(ChooseViewWords.OUTING, outing);
    return form;
  }

  private static Conditions places(Conditions c, int wells, int dabs) {
    return new Conditions(
        wells, dabs, c.must(), c.never(), c.rules(), c.mostOfAGroup(), c.weights(), c.subjects());
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
    floor.setValue(now().rules().lightfastness());
    floor
        .valueProperty()
        .addListener(
            (o, was, is) ->
                rule(
                    r ->
                        new Conditions.Rules(r.ownedOnly(), r.singlePigment(), r.noCadmium(), is)));
    return floor;
  }

  private void rule(UnaryOperator<Conditions.Rules> change) {
    change(c -> c.withRules(change.apply(c.rules())));
  }

  private VBox rules() {
    CheckBox owned = new CheckBox(ChooseViewWords.OWNED);
    CheckBox single = new CheckBox(ChooseViewWords.SINGLE);
    CheckBox noCadmium = new CheckBox(ChooseViewWords.NO_CADMIUM);
    owned.setSelected(now().rules().ownedOnly());
    single.setSelected(now().rules().singlePigment());
    noCadmium.setSelected(now().rules().noCadmium());
    for (CheckBox box : List.of(owned, single, noCadmium)) {
      box.setOnAction(
          event ->
              rule(
                  r ->
                      new Conditions.Rules(
                          owned.isSelected(),
                          single.isSelected(),
                          noCadmium.isSelected(),
                          r.lightfastness())));
    }
    return new VBox(6, owned, single, noCadmium);
  }

  private FormGrid weights() {
    FormGrid form = new FormGrid();
    for (Aim aim : Aim.values()) {
      Slider slider = new Slider(0, Weights.MOST, now().weights().of(aim));
      slider.setMajorTickUnit(1);
      slider.setMinorTickCount(0);
      slider.setSnapToTicks(true);
      slider
          .valueProperty()
          .addListener(
              (o, was, is) ->
                  change(c -> c.withWeights(c.weights().with(aim, Math.rint(is.doubleValue())))));
      Label number = new Label(figure(slider.getValue()));
      number.setMinWidth(NUMBER_WIDTH);
      slider.valueProperty().addListener((o, was, is) -> number.setText(figure(is.doubleValue())));
      slider.setAccessibleText(ChooseWords.label(aim));
      HBox.setHgrow(slider, Priority.ALWAYS);
      form.row(ChooseWords.label(aim), new HBox(6, slider, number));
    }
    return form;
  }

  private static String figure(double weight) {
    return Long.toString(Math.round(weight));
  }

  private void follow() {
    Optional<Outing> chosen =
        Optional.ofNullable(outing.getValue())
            .flatMap(o -> o)
            .map(Outing::id)
            .flatMap(id -> model.session().kit().outing(id));
    outing.getItems().setAll(List.of(Optional.empty()));
    model.session().kit().outings().forEach(o -> outing.getItems().add(Optional.of(o)));
    outing.setValue(chosen);
    paints.getChildren().clear();
    for (Paint paint : model.session().kit().shelf().paints()) {
      paints.getChildren().add(row(paint));
    }
  }

  private HBox row(Paint paint) {
    Label name = new Label(paint.name());
    name.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(name, Priority.ALWAYS);
    ComboBox<Wish> wish = new ComboBox<>();
    wish.getItems().setAll(Wish.FREE, Wish.MUST, Wish.NEVER);
    if (model.sits(paint.id())) {
      wish.getItems().add(2, Wish.KEPT);
    }
    wish.setConverter(new ByLabel<>(ConditionsForm::label));
    wish.setValue(
        wish.getItems().contains(model.wish(paint.id())) ? model.wish(paint.id()) : Wish.MUST);
    wish.setAccessibleText(paint.name());
    wish.valueProperty().addListener((o, was, is) -> model.wish(paint.id(), is));
    wish.setPrefWidth(140);
    wish.setMinWidth(140);
    HBox row = new HBox(6, name, wish);
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }

  private static String label(Wish wish) {
    return switch (wish) {
      case FREE -> ChooseViewWords.FREE;
      case MUST -> ChooseViewWords.MUST;
      case KEPT -> ChooseViewWords.KEPT;
      case NEVER -> ChooseViewWords.NEVER;
    };
  }
}
