package org.panwright.app.boxes;

import java.util.function.BiConsumer;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.panwright.app.fx.TypedNumber;
import org.panwright.words.BoxEditorWords;

/**
 * Two lengths in millimetres side by side, across and down as the box is drawn; what is no number
 * counts as NaN.
 */
final class SizePair extends HBox {
  private static final int DECIMALS = 2;

  private final TextField first = new TextField();
  private final TextField second = new TextField();
  private boolean showing;

  /**
   * @param firstMeaning for readers of the screen
   * @param secondMeaning for readers of the screen
   * @param typed gets both lengths at each change by the painter
   */
  SizePair(String firstMeaning, String secondMeaning, BiConsumer<Double, Double> typed) {
    super(8);
    setAlignment(Pos.CENTER_LEFT);
    first.setPrefColumnCount(4);
    second.setPrefColumnCount(4);
    first.setAccessibleText(firstMeaning);
    second.setAccessibleText(secondMeaning);
    first.textProperty().addListener(changed -> tell(typed));
    second.textProperty().addListener(changed -> tell(typed));
    getChildren()
        .setAll(first, caption(BoxEditorWords.ACROSS), second, caption(BoxEditorWords.DOWN));
  }

  private static Label caption(String word) {
    Label caption = new Label(word);
    caption.getStyleClass().add("soft");
    caption.setMinWidth(Region.USE_PREF_SIZE);
    return caption;
  }

  /** Shows lengths, leaving alone a field that already says the same in other figures. */
  void show(double firstMm, double secondMm) {
    showing = true;
    show(first, firstMm);
    show(second, secondMm);
    showing = false;
  }

  private static void show(TextField field, double mm) {
    double now = TypedNumber.read(field.getText()).orElse(Double.NaN);
    if (Double.compare(now, mm) != 0 && !(Double.isNaN(mm) && Double.isNaN(now))) {
      field.setText(TypedNumber.write(mm, DECIMALS));
    }
  }

  private void tell(BiConsumer<Double, Double> typed) {
    if (!showing) {
      typed.accept(number(first), number(second));
    }
  }

  private static double number(TextField field) {
    return TypedNumber.read(field.getText()).orElse(Double.NaN);
  }
}
