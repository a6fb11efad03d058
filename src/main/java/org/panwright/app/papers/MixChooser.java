package org.panwright.app.papers;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Sentence;
import org.panwright.kit.KeptMix;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Paint;
import org.panwright.print.CardMixes;
import org.panwright.words.PaperViewWords;
import org.panwright.words.RecipeWords;

/** The mixes of the key card, each to be left out, and a row to add one. */
final class MixChooser extends VBox {
  private final MixChoice choice;
  private final VBox rows = new VBox(2);
  private final Label hint = Sentence.of(PaperViewWords.USEFUL, "soft");
  private final Button usual = new Button(PaperViewWords.USEFUL_AGAIN);
  private final ChoiceBox<Paint> first = paints(PaperViewWords.FIRST_PAINT);
  private final ChoiceBox<Paint> second = paints(PaperViewWords.SECOND_PAINT);
  private final ChoiceBox<Ratio> parts = new ChoiceBox<>();

  MixChooser(MixChoice choice) {
    super(6);
    this.choice = choice;
    Label heading = new Label(PaperViewWords.MIXES);
    heading.getStyleClass().add("strong");
    hint.managedProperty().bind(hint.visibleProperty());
    usual.managedProperty().bind(usual.visibleProperty());
    usual.setOnAction(event -> choice.useUsual());
    parts.getItems().setAll(MixChoice.RATIOS);
    parts.setConverter(new ByLabel<>(r -> PaperViewWords.parts(r.first(), r.second())));
    parts.setValue(MixChoice.RATIOS.get(0));
    parts.setAccessibleText(PaperViewWords.PARTS);
    Button add = new Button(PaperViewWords.ADD_MIX);
    add.setOnAction(
        event -> {
          if (first.getValue() != null && second.getValue() != null) {
            choice.add(first.getValue(), second.getValue(), parts.getValue());
          }
        });
    getChildren().setAll(heading, hint, rows, usual, first, second, new HBox(6, parts, add));
    choice.mixesProperty().addListener(changed -> show());
    show();
  }

  private void show() {
    hint.setVisible(!choice.isOwn());
    usual.setVisible(choice.isOwn());
    List<Node> shown = new ArrayList<>();
    choice
        .kit()
        .ifPresent(
            kit ->
                choice
                    .mixesProperty()
                    .get()
                    .forEach(
                        mix ->
                            shown.add(row(mix, RecipeWords.recipe(CardMixes.recipe(mix), kit)))));
    rows.getChildren().setAll(shown);
    offer(first, 0);
    offer(second, 1);
  }

  private void offer(ChoiceBox<Paint> box, int usualPlace) {
    List<Paint> paints = choice.paints();
    if (!box.getItems().equals(paints)) {
      box.getItems().setAll(paints);
      if (!paints.isEmpty()) {
        box.setValue(paints.get(Math.min(usualPlace, paints.size() - 1)));
      }
    }
  }

  private Node row(KeptMix mix, String words) {
    Label text = new Label(choice.inShort(mix));
    text.setMaxWidth(Double.MAX_VALUE);
    text.setTooltip(new Tooltip(words));
    HBox.setHgrow(text, Priority.ALWAYS);
    Button remove = new Button("×");
    remove.setAccessibleText(PaperViewWords.removeMix(words));
    remove.setTooltip(new Tooltip(PaperViewWords.removeMix(words)));
    remove.getStyleClass().add("mix-remove");
    remove.setMinWidth(Region.USE_PREF_SIZE);
    remove.setOnAction(event -> choice.remove(mix));
    HBox row = new HBox(6, text, remove);
    row.setAlignment(Pos.CENTER_LEFT);
    return row;
  }

  private static ChoiceBox<Paint> paints(String name) {
    ChoiceBox<Paint> box = new ChoiceBox<>();
    box.setConverter(new ByLabel<>(Paint::name));
    box.setAccessibleText(name);
    box.setMaxWidth(Double.MAX_VALUE);
    return box;
  }
}
