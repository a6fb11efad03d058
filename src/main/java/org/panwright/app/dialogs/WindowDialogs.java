package org.panwright.app.dialogs;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Dialog;
import javafx.scene.control.DialogPane;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.stage.FileChooser;
import javafx.stage.Modality;
import javafx.stage.Stage;
import org.panwright.app.fx.Sentence;
import org.panwright.app.theme.Looks;
import org.panwright.words.DialogWords;

/** Dialogs that belong to a window and wear its theme. */
public final class WindowDialogs implements Dialogs {
  private static final double SENTENCE_WIDTH_EM = 34;

  private final Stage owner;
  private final Looks looks;

  /** Dialogs before {@code owner}. */
  public WindowDialogs(Stage owner, Looks looks) {
    this.owner = owner;
    this.looks = looks;
  }

  @Override
  public void tell(String title, String sentence) {
    ask(title, sentence, List.of(Choice.leave(DialogWords.UNDERSTOOD, true)));
  }

  @Override
  public <T> T ask(String title, String sentence, List<Choice<T>> choices) {
    Map<ButtonType, T> values = new LinkedHashMap<>();
    T leaving = null;
    for (Choice<T> choice : choices) {
      values.put(new ButtonType(choice.label(), place(choice.role())), choice.value());
      if (choice.role() == Choice.Role.LEAVE) {
        leaving = choice.value();
      }
    }
    Dialog<ButtonType> dialog = dialog(title, sentence(sentence));
    dialog.getDialogPane().getButtonTypes().setAll(values.keySet());
    Optional<ButtonType> answer = show(dialog);
    T left = leaving;
    return answer.map(button -> values.getOrDefault(button, left)).orElse(left);
  }

  @Override
  public <R> Optional<R> fillIn(Form<R> form) {
    ButtonType accept = new ButtonType(form.accept(), ButtonData.OK_DONE);
    ButtonType leave = new ButtonType(DialogWords.LEAVE, ButtonData.CANCEL_CLOSE);
    Dialog<ButtonType> dialog = dialog(form.title(), form.content());
    dialog.setResizable(true);
    dialog.getDialogPane().getButtonTypes().setAll(accept, leave);
    Button button = (Button) dialog.getDialogPane().lookupButton(accept);
    BooleanBinding unready =
        Bindings.createBooleanBinding(() -> !form.ready().getValue(), form.ready());
    button.disableProperty().bind(unready);
    form.further().ifPresent(further -> add(further, dialog.getDialogPane(), unready));
    dialog.setOnShown(event -> Platform.runLater(form.firstField()::requestFocus));
    return show(dialog).filter(accept::equals).map(pressed -> form.result().get());
  }

  /** Shortcut and Enter do it as well, from any field. */
  private static void add(Form.Further further, DialogPane pane, BooleanBinding unready) {
    ButtonType type = new ButtonType(further.label(), ButtonData.LEFT);
    pane.getButtonTypes().add(type);
    Node button = pane.lookupButton(type);
    ButtonBar.setButtonUniformSize(button, false);
    button.disableProperty().bind(unready);
    button.addEventFilter(
        ActionEvent.ACTION,
        event -> {
          event.consume();
          further.work().run();
        });
    KeyCombination keys = KeyCombination.valueOf("Shortcut+Enter");
    Tooltip.install(button, new Tooltip(keys.getDisplayText()));
    pane.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (keys.match(event) && !unready.get()) {
            event.consume();
            further.work().run();
          }
        });
  }

  @Override
  public Optional<Path> chooseToOpen(FileKind kind, Optional<Path> folder) {
    return Optional.ofNullable(chooser(kind, folder).showOpenDialog(owner)).map(File::toPath);
  }

  @Override
  public Optional<Path> chooseToSave(FileKind kind, Optional<Path> folder, String suggestedName) {
    FileChooser chooser = chooser(kind, folder);
    chooser.setInitialFileName(kind.complete(suggestedName));
    return Optional.ofNullable(chooser.showSaveDialog(owner))
        .map(File::toPath)
        .flatMap(path -> completed(kind, path));
  }

  /** The chooser asks before a file is replaced, but only of the name as it was typed. */
  private Optional<Path> completed(FileKind kind, Path typed) {
    Path whole = typed.resolveSibling(kind.complete(typed.getFileName().toString()));
    boolean free = whole.equals(typed) || !Files.exists(whole);
    boolean sure =
        free
            || ask(
                DialogWords.REPLACE_TITLE,
                DialogWords.replaceSentence(whole),
                List.of(
                    Choice.other(DialogWords.REPLACE, true),
                    Choice.leave(DialogWords.LEAVE, false)));
    return sure ? Optional.of(whole) : Optional.empty();
  }

  private static FileChooser chooser(FileKind kind, Optional<Path> folder) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(kind.title());
    chooser
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter(kind.name(), kind.patterns()));
    folder.filter(Files::isDirectory).ifPresent(f -> chooser.setInitialDirectory(f.toFile()));
    return chooser;
  }

  private static Dialog<ButtonType> dialog(String title, Node content) {
    Dialog<ButtonType> dialog = new Dialog<>();
    dialog.setTitle(title);
    dialog.setHeaderText(title);
    dialog.getDialogPane().setContent(content);
    return dialog;
  }

  private Optional<ButtonType> show(Dialog<ButtonType> dialog) {
    if (owner.isShowing()) {
      dialog.initOwner(owner);
    }
    dialog.initModality(Modality.WINDOW_MODAL);
    DialogPane pane = dialog.getDialogPane();
    looks.dress(pane.getStylesheets(), pane);
    try {
      return dialog.showAndWait();
    } finally {
      looks.undress(pane);
    }
  }

  private static Label sentence(String text) {
    Label label = Sentence.of(text);
    double em = label.getFont().getSize();
    label.setPrefWidth(SENTENCE_WIDTH_EM * em);
    return label;
  }

  private static ButtonData place(Choice.Role role) {
    return switch (role) {
      case USUAL -> ButtonData.OK_DONE;
      case OTHER -> ButtonData.LEFT;
      case LEAVE -> ButtonData.CANCEL_CLOSE;
    };
  }
}
