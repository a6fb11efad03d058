package org.panwright.app.files;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.fx.Sentence;
import org.panwright.kit.FileProblem;
import org.panwright.words.FileProblemWords;
import org.panwright.words.FileWords;

/** What has to be told about the kit's file, calmly, in one line above the views. */
public final class NoticeBar extends HBox {
  private final Dialogs dialogs;
  private final Label sentence = Sentence.of("");
  private final Button all = new Button(FileWords.ALL_NOTICES);
  private List<String> notices = List.of();

  public NoticeBar(KitDocument document, Dialogs dialogs) {
    this.dialogs = dialogs;
    getStyleClass().add("notice");
    sentence.setId("notice");
    sentence.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(sentence, Priority.ALWAYS);
    all.setMinWidth(USE_PREF_SIZE);
    all.setOnAction(event -> showAll());
    Button seen = new Button(FileWords.NOTICE_SEEN);
    seen.setMinWidth(USE_PREF_SIZE);
    seen.setOnAction(event -> document.noticesRead());
    getChildren().setAll(sentence, all, seen);
    document.noticesProperty().addListener((property, before, now) -> tell(now));
    tell(document.noticesProperty().get());
  }

  private void tell(List<FileProblem> problems) {
    List<String> sentences = problems.stream().map(FileProblemWords::sentence).toList();
    notices = sentences;
    boolean some = !sentences.isEmpty();
    setVisible(some);
    setManaged(some);
    all.setVisible(sentences.size() > 1);
    all.setManaged(sentences.size() > 1);
    sentence.setText(some ? FileWords.firstOf(sentences.get(0), sentences.size() - 1) : "");
  }

  private void showAll() {
    dialogs.tell(FileWords.NOTICES_TITLE, String.join("\n\n", notices));
  }
}
