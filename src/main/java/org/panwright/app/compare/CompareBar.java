package org.panwright.app.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import org.panwright.app.fx.ByLabel;
import org.panwright.kit.Outing;
import org.panwright.paint.Paint;
import org.panwright.words.ArrangeWords;
import org.panwright.words.CompareWords;

/** Which two lineups are compared, and for which place. */
final class CompareBar extends FlowPane {
  private final CompareModel model;
  private final ComboBox<Side> first = new ComboBox<>();
  private final ComboBox<Side> second = new ComboBox<>();
  private final ComboBox<Paint> out = new ComboBox<>();
  private final ComboBox<Paint> in = new ComboBox<>();
  private final ComboBox<Optional<Outing>> outing = new ComboBox<>();
  private boolean following;

  /**
   * @param arrange asks how the lineup looked at is to be laid into its wells
   */
  CompareBar(CompareModel model, ComparedPage page, Runnable arrange) {
    super(8, 6);
    this.model = model;
    getStyleClass().add("compare-bar");
    sides(first, CompareWords.FIRST, true);
    sides(second, CompareWords.SECOND, false);
    paints(out, CompareWords.OUT);
    paints(in, CompareWords.IN);
    outings();
    Button turn = new Button("⇄");
    turn.setTooltip(new Tooltip(CompareWords.TURN_ROUND));
    turn.setAccessibleText(CompareWords.TURN_ROUND);
    turn.setOnAction(event -> model.turnRound());
    Button lay = new Button(ArrangeWords.LINE);
    lay.setOnAction(event -> arrange.run());
    lay.disableProperty().bind(model.session().lineupProperty().map(Optional::isEmpty));
    ToggleButton sheet = new ToggleButton(CompareWords.PAGE);
    sheet.setTooltip(new Tooltip(CompareWords.PAGE_MEANING));
    sheet.selectedProperty().bindBidirectional(page.lookedProperty());
    sheet.disableProperty().bind(model.comparedProperty().map(Optional::isEmpty));
    getChildren()
        .addAll(
            group(soft(CompareWords.FIRST), first, turn, soft(CompareWords.SECOND), second),
            group(soft(CompareWords.SWAP), out, in, exchange()),
            group(soft(CompareWords.OUTING), outing),
            group(lay, sheet));
    model.firstProperty().addListener(changed -> follow());
    model.secondProperty().addListener(changed -> follow());
    model.session().historyProperty().addListener(changed -> follow());
    model.session().lineupProperty().addListener(changed -> follow());
    follow();
  }

  private Button exchange() {
    Button exchange = new Button(CompareWords.SHOW_SWAP);
    exchange.setTooltip(new Tooltip(CompareWords.SWAP_MEANING));
    exchange.setOnAction(
        event -> {
          if (out.getValue() != null && in.getValue() != null) {
            model.exchange(out.getValue(), in.getValue());
          }
        });
    exchange.disableProperty().bind(out.valueProperty().isNull().or(in.valueProperty().isNull()));
    return exchange;
  }

  private void outings() {
    outing.setConverter(new ByLabel<>(o -> o.map(Outing::name).orElse(CompareWords.NO_OUTING)));
    outing.setAccessibleText(CompareWords.OUTING);
    outing
        .valueProperty()
        .addListener(
            (o, before, now) -> {
              if (!following && now != null) {
                model.outingProperty().set(now);
              }
            });
  }

  private void sides(ComboBox<Side> box, String what, boolean isFirst) {
    box.setConverter(new ByLabel<>(Side::label));
    box.setAccessibleText(what);
    box.setPrefWidth(220);
    box.valueProperty()
        .addListener(
            (o, before, now) -> {
              if (!following && now != null) {
                (isFirst ? model.firstProperty() : model.secondProperty()).set(Optional.of(now));
              }
            });
  }

  private static void paints(ComboBox<Paint> box, String what) {
    box.setConverter(new ByLabel<>(Paint::name));
    box.setPromptText(what);
    box.setAccessibleText(what);
    box.setPrefWidth(150);
  }

  private static HBox group(Node... nodes) {
    HBox group = new HBox(6, nodes);
    group.setAlignment(Pos.CENTER_LEFT);
    return group;
  }

  private static Label soft(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("soft");
    return label;
  }

  private void follow() {
    following = true;
    List<Side> choices = model.choices();
    fill(first, choices, model.firstProperty().get());
    fill(second, choices, model.secondProperty().get());
    refill(out, model.paintsOfFirst());
    refill(in, model.paintsBesideFirst());
    List<Optional<Outing>> outings = new ArrayList<>(List.of(Optional.empty()));
    model.session().kit().outings().forEach(o -> outings.add(Optional.of(o)));
    offer(outing, outings);
    outing.setValue(model.outingProperty().get());
    following = false;
  }

  private static void fill(ComboBox<Side> box, List<Side> choices, Optional<Side> chosen) {
    List<Side> all = new ArrayList<>(choices);
    chosen.filter(side -> !choices.contains(side)).ifPresent(all::add);
    offer(box, all);
    box.setValue(chosen.orElse(null));
  }

  private static void refill(ComboBox<Paint> box, List<Paint> paints) {
    Paint was = box.getValue();
    offer(box, paints);
    box.setValue(paints.contains(was) ? was : null);
  }

  /** Offers these, unless they are offered already: a list set anew is built anew. */
  private static <T> void offer(ComboBox<T> box, List<T> choices) {
    if (!box.getItems().equals(choices)) {
      box.getItems().setAll(choices);
    }
  }
}
