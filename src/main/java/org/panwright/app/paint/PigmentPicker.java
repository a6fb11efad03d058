package org.panwright.app.paint;

import java.util.function.Consumer;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.app.chip.ChipInk;
import org.panwright.app.chip.Tones;
import org.panwright.app.fx.PassedKeys;
import org.panwright.paint.Pigment;
import org.panwright.words.PaintEditorWords;
import org.panwright.words.PaintWords;

/**
 * A field to search the library with and the pigments it finds; Enter or a double click takes one.
 */
final class PigmentPicker extends VBox {
  /** How a pigment alone is predicted to look. */
  interface Looks {
    Tones of(Pigment pigment);
  }

  private final PigmentSearch search;
  private final Consumer<Pigment> taken;
  private final TextField field = new TextField();
  private final ListView<Pigment> found = new ListView<>();

  PigmentPicker(PigmentSearch search, Looks looks, Consumer<Pigment> taken) {
    super(6);
    this.search = search;
    this.taken = taken;
    field.setId("pigment-search");
    field.setPromptText(PaintEditorWords.SEARCH_PROMPT);
    field.setAccessibleText(PaintEditorWords.SEARCH);
    found.setId("pigments-found");
    found.getStyleClass().add("framed");
    found.setAccessibleText(PaintEditorWords.SEARCH);
    found.setPlaceholder(new Label(PaintEditorWords.NOTHING_FOUND));
    ChipInk ink = new ChipInk(Orientation.HORIZONTAL, 3);
    found.setFixedCellSize(30);
    found.setPrefHeight(186);
    found.setCellFactory(list -> new Cell(looks, ink));
    field.textProperty().addListener(changed -> refresh());
    field.setOnAction(event -> takeOrLeave());
    field.addEventFilter(KeyEvent.KEY_PRESSED, this::stepIntoList);
    found.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ENTER) {
            take();
            event.consume();
          }
        });
    found.setOnMouseClicked(
        event -> {
          if (event.getClickCount() == 2) {
            take();
          }
        });
    getChildren().setAll(field, found);
    VBox.setVgrow(found, Priority.ALWAYS);
    refresh();
  }

  private void refresh() {
    found.getItems().setAll(search.matching(field.getText()));
    if (field.getText().isBlank()) {
      // Enter after a pigment was taken is meant for the form, not for the first of the library.
      found.getSelectionModel().clearSelection();
    } else {
      found.getSelectionModel().selectFirst();
    }
    found.scrollTo(0);
  }

  private void takeOrLeave() {
    if (found.getSelectionModel().isEmpty() && field.getText().isBlank()) {
      PassedKeys.enter(field);
    } else {
      take();
    }
  }

  private void take() {
    Pigment pigment = found.getSelectionModel().getSelectedItem();
    if (pigment != null) {
      taken.accept(pigment);
      field.clear();
    }
  }

  private void stepIntoList(KeyEvent event) {
    if (event.getCode() == KeyCode.DOWN) {
      found.getSelectionModel().selectNext();
      event.consume();
    } else if (event.getCode() == KeyCode.UP) {
      found.getSelectionModel().selectPrevious();
      event.consume();
    } else {
      return;
    }
    found.scrollTo(Math.max(0, found.getSelectionModel().getSelectedIndex() - 2));
  }

  private static final class Cell extends ListCell<Pigment> {
    private final Looks looks;
    private final ChipInk ink;
    private final Region chip = new Region();
    private final Label code = new Label();
    private final Label name = new Label();
    private final HBox row = new HBox(10, chip, code, name);

    Cell(Looks looks, ChipInk ink) {
      this.looks = looks;
      this.ink = ink;
      chip.setMinSize(44, 18);
      chip.setMaxSize(44, 18);
      code.setMinWidth(58);
      code.getStyleClass().add("strong");
      name.getStyleClass().add("soft");
      row.setAlignment(Pos.CENTER_LEFT);
      // Without a width of its own the cell takes the list's and never asks to be scrolled
      // sideways.
      setPrefWidth(0);
    }

    @Override
    protected void updateItem(Pigment pigment, boolean empty) {
      super.updateItem(pigment, empty);
      if (empty || pigment == null) {
        setGraphic(null);
        setAccessibleText(null);
        return;
      }
      chip.setBackground(ink.of(looks.of(pigment)));
      code.setText(pigment.name().code());
      name.setText(name(pigment));
      setAccessibleText(pigment.name().code() + " " + name(pigment));
      setGraphic(row);
    }

    private static String name(Pigment pigment) {
      String kind = pigment.name().variant();
      return pigment.commonName()
          + (kind.isEmpty() ? "" : ", " + kind)
          + "  ·  "
          + PaintWords.label(pigment.family());
    }
  }
}
