package org.panwright.app.subject;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.Sentence;
import org.panwright.app.recipes.TwoSwatches;
import org.panwright.kit.Kit;
import org.panwright.words.SubjectWords;

/** One subject colour: its name, its nearest mixes, what can be done with it. */
final class SubjectCard extends VBox {
  SubjectCard(SubjectModel model, SubjectRow row, Kit kit) {
    getStyleClass().add("finding");
    TextField name = new TextField(row.colour().name());
    name.setAccessibleText(SubjectWords.NAME);
    name.setOnAction(e -> model.rename(row.colour(), name.getText()));
    name.focusedProperty()
        .addListener(
            (o, was, focused) -> {
              if (!focused) {
                model.rename(row.colour(), name.getText());
              }
            });
    HBox.setHgrow(name, Priority.ALWAYS);
    Label share = new Label(SubjectWords.share(row.colour()));
    share.getStyleClass().addAll("soft", "small");
    share.setMinWidth(Region.USE_PREF_SIZE);
    share.setManaged(!share.getText().isEmpty());
    HBox head = new HBox(name, share);
    head.getStyleClass().add("lineup-bar");
    head.setAlignment(Pos.CENTER_LEFT);
    getChildren().add(head);
    getChildren()
        .add(
            new TwoSwatches(
                row.colour().lab(),
                row.box().map(near -> near.match().lab()).orElse(row.colour().lab())));
    getChildren()
        .add(
            Sentence.of(
                row.box()
                    .map(near -> SubjectWords.fromBox(near.match(), near.trust(), kit))
                    .orElse(SubjectWords.EMPTY_BOX)));
    row.shelf()
        .ifPresent(
            near -> {
              Label shelf = Sentence.of(SubjectWords.fromShelf(near.match(), near.trust(), kit));
              shelf.getStyleClass().addAll("soft", "small");
              getChildren().add(shelf);
            });
    Button replace = button(SubjectWords.REPLACE, () -> model.replaceByPicked(row.colour()));
    replace.disableProperty().bind(model.pickedProperty().map(Optional::isEmpty));
    FlowPane actions =
        new FlowPane(
            button(SubjectWords.WAYS, () -> model.pick(row.colour())),
            replace,
            button(SubjectWords.REMOVE, () -> model.remove(row.colour())));
    actions.getStyleClass().add("finding-actions");
    getChildren().add(actions);
  }

  private static Button button(String words, Runnable work) {
    Button button = new Button(words);
    button.getStyleClass().addAll("quiet", "small");
    button.setOnAction(e -> work.run());
    return button;
  }
}
