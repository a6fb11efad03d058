package org.panwright.app.fill;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.panwright.app.Session;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.fx.Parted;
import org.panwright.words.FillViewWords;

/**
 * Four parts of which one is shown: plan, tubes, where things are, pans. Each is built when it is
 * first looked at.
 */
public final class FillView extends VBox implements Parted {
  private final StackPane ground = new StackPane();
  private final HBox strip = new HBox();
  private final ToggleGroup group = new ToggleGroup();
  private final Map<String, Node> built = new HashMap<>();
  private final List<Runnable> shown = new ArrayList<>();

  /**
   * @param later when the part shown first is built
   */
  public FillView(FillModel model, Session session, Dialogs dialogs, Executor later) {
    getStyleClass().add("fill-view");
    strip.getStyleClass().addAll("joined", "fill-parts");
    strip.setAccessibleText(FillViewWords.PARTS);
    List<ToggleButton> buttons = new ArrayList<>();
    buttons.add(part(FillViewWords.PLAN, () -> new PlanPart(model, later), PlanPart::show));
    buttons.add(part(FillViewWords.TUBES, () -> new TubesPart(model, dialogs), TubesPart::show));
    buttons.add(part(FillViewWords.WHERE, () -> new WherePart(model), WherePart::show));
    buttons.add(part(FillViewWords.PANS, () -> new PansPart(model, dialogs), PansPart::show));
    buttons.get(0).getStyleClass().add("first");
    buttons.get(buttons.size() - 1).getStyleClass().add("last");
    strip.getChildren().setAll(buttons);
    VBox.setVgrow(ground, Priority.ALWAYS);
    getChildren().setAll(strip, ground);
    group.selectToggle(buttons.get(0));
    later.execute(() -> showFirst(buttons.get(0)));
    session.historyProperty().addListener(changed -> show());
    model.planProperty().addListener(changed -> show());
    model.furtherProperty().addListener(changed -> show());
    sceneProperty().addListener((property, before, now) -> model.setShown(now != null));
  }

  @Override
  public List<Node> parts() {
    return Stream.concat(Stream.of(strip), ground.getChildren().stream()).toList();
  }

  /** Shows the first part, unless another was asked for meanwhile. */
  private void showFirst(ToggleButton first) {
    if (first.isSelected()) {
      first.fire();
    }
  }

  private <P extends Node> ToggleButton part(String name, Supplier<P> content, Consumer<P> show) {
    ToggleButton button = new ToggleButton(name);
    button.setToggleGroup(group);
    button.setOnAction(
        event -> {
          button.setSelected(true);
          ground.getChildren().setAll(built.computeIfAbsent(name, n -> build(content, show)));
        });
    return button;
  }

  private <P extends Node> Node build(Supplier<P> content, Consumer<P> show) {
    P part = content.get();
    shown.add(() -> show.accept(part));
    show.accept(part);
    return part;
  }

  private void show() {
    shown.forEach(Runnable::run);
  }
}
