package org.panwright.app.ground;

import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import org.panwright.app.Session;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.Form;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Sentence;
import org.panwright.paint.Paper;
import org.panwright.paint.Wash;
import org.panwright.words.GroundWords;
import org.panwright.words.PaintWords;

/** Asks for the paper and the wash strengths. */
public final class GroundEditor {
  private final Session session;
  private final Dialogs dialogs;

  public GroundEditor(Session session, Dialogs dialogs) {
    this.session = session;
    this.dialogs = dialogs;
  }

  /** Opens the form. */
  public void open() {
    GroundModel model = new GroundModel(session.kit());
    ChoiceBox<Paper> paper = new ChoiceBox<>();
    paper.setConverter(new ByLabel<>(Paper::name));
    paper.getItems().setAll(model.papers());
    paper.valueProperty().bindBidirectional(model.paperProperty());
    FormGrid fields = new FormGrid();
    fields.row(GroundWords.PAPER, paper);
    VBox content = new VBox(12, fields, heading(), note(GroundWords.WASHES_NOTE), washes(model));
    content.setPrefWidth(490);
    dialogs
        .fillIn(
            new Form<>(
                GroundWords.TITLE,
                content,
                GroundWords.ACCEPT,
                model.problemProperty().map(String::isEmpty),
                model::edits,
                paper))
        .ifPresent(edits -> edits.forEach(session::perform));
  }

  private static VBox washes(GroundModel model) {
    FormGrid grid = new FormGrid();
    for (Wash wash : Wash.values()) {
      TextField load = new TextField();
      load.setPrefColumnCount(6);
      load.textProperty().bindBidirectional(model.loadProperty(wash));
      String label = PaintWords.explain(wash);
      if (wash.ordinal() == Wash.values().length - 1) {
        grid.row(label, load, model.problemProperty());
      } else {
        grid.row(label, load);
      }
    }
    Button usual = new Button(GroundWords.USUAL);
    usual.setOnAction(event -> model.usual());
    return new VBox(12, grid, usual);
  }

  private static Label heading() {
    return Sentence.of(GroundWords.WASHES, "part-heading");
  }

  private static Label note(String text) {
    return Sentence.of(text, "soft");
  }
}
