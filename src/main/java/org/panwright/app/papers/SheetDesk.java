package org.panwright.app.papers;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.panwright.print.Sheet;
import org.panwright.words.PaperViewWords;

/** Sheets under each other as they will be printed. */
public final class SheetDesk extends ScrollPane {
  /** Room left of and right of a sheet together, with the scroll bar. */
  private static final double SIDES = 72;

  /** Pixels for a millimetre, from which type of 4 points can be read. */
  private static final double MOST_SCALE = 5;

  /** From this many marks on no further sheet is drawn: more would make the window wait. */
  private static final int MOST_MARKS = 6000;

  private final VBox pictures = new VBox(24);
  private List<Sheet> sheets = List.of();
  private boolean fontsLoaded;

  public SheetDesk() {
    pictures.setAlignment(Pos.TOP_CENTER);
    pictures.getStyleClass().addAll("swatch-ground", "paper-desk");
    setContent(pictures);
    setFitToWidth(true);
    setFitToHeight(true);
    widthProperty().addListener(changed -> draw());
  }

  /** Shows these sheets. */
  public void show(List<Sheet> shown) {
    sheets = shown;
    draw();
  }

  private void draw() {
    if (!sheets.isEmpty() && !fontsLoaded) {
      SheetPicture.loadFonts();
      fontsLoaded = true;
    }
    List<Node> drawn = new ArrayList<>();
    int marks = 0;
    for (Sheet sheet : sheets) {
      marks += sheet.singleMarks().size();
      if (!drawn.isEmpty() && marks > MOST_MARKS) {
        Label more = new Label(PaperViewWords.furtherSheets(sheets.size() - drawn.size()));
        more.getStyleClass().add("paper-further");
        drawn.add(more);
        break;
      }
      drawn.add(picture(sheet));
    }
    pictures.getChildren().setAll(drawn);
  }

  /** As wide as the desk, but no larger than small type needs to be read. */
  private Node picture(Sheet sheet) {
    double scale = (getWidth() - SIDES) / sheet.widthMm();
    SheetPicture picture = new SheetPicture(sheet, Math.max(1, Math.min(MOST_SCALE, scale)));
    picture.getStyleClass().add("paper-sheet");
    picture.setAccessibleText(
        PaperViewWords.sheet(sheet.title(), sheet.widthMm(), sheet.heightMm()));
    return picture;
  }
}
