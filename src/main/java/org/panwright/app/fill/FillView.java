package org.panwright.app.fill;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.panwright.app.Session;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.words.FillViewWords;

/** Four parts of which one is shown: plan, tubes, where things are, pans. */
public final class FillView extends VBox {
  private final StackPane ground = new StackPane();
  private final HBox strip = new HBox();
  private final ToggleGroup group = new ToggleGroup();
  private final PlanPart plan;
  private final TubesPart tubes;
  private final WherePart where;
  private final PansPart pans;

  public FillView(FillModel model, Session session, Dialogs dialogs) {
    getStyleClass().add("fill-view");
    plan = new PlanPart(model);
    tubes = new TubesPart(model, dialogs);
    where = new WherePart(model);
    pans = new PansPart(model, dialogs);
    strip.getStyleClass().addAll("joined", "fill-parts");
    strip.setAccessibleText(FillViewWords.PARTS);
    List<ToggleButton> buttons = new ArrayList<>();
    buttons.add(part(FillViewWords.PLAN, plan));
    buttons.add(part(FillViewWords.TUBES, tubes));
    buttons.add(part(FillViewWords.WHERE, where));
    buttons.add(part(FillViewWords.PANS, pans));
    buttons.get(0).getStyleClass().add("first");
    buttons.get(buttons.size() - 1).getStyleClass().add("last");
    strip.getChildren().setAll(buttons);
    VBox.setVgrow(ground, Priority.ALWAYS);
    getChildren().setAll(strip, ground);
    buttons.get(0).fire();
    session.historyProperty().addListener(changed -> show());
    model.planProperty().addListener(changed -> show());
    model.furtherProperty().addListener(changed -> show());
    sceneProperty().addListener((property, before, now) -> model.setShown(now != null));
    show();
  }

  private ToggleButton part(String name, Node content) {
    ToggleButton button = new ToggleButton(name);
    button.setToggleGroup(group);
    button.setOnAction(
        event -> {
          button.setSelected(true);
          ground.getChildren().setAll(content);
        });
    return button;
  }

  private void show() {
    plan.show();
    tubes.show();
    where.show();
    pans.show();
  }
}
