package org.panwright.app.swatches;

import java.util.List;
import java.util.OptionalDouble;
import javafx.beans.property.DoubleProperty;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.panwright.app.fx.CommittedField;
import org.panwright.app.fx.TypedNumber;
import org.panwright.swatch.sheet.Card;
import org.panwright.words.SpotsWords;

/** How much of the light a neutral card turns back: typed, or that of a usual card. */
public final class CardFields extends HBox {
  private final DoubleProperty share;
  private final CommittedField percent = new CommittedField(this::typed);

  /**
   * @param share of the light, above 0 and below 1
   */
  public CardFields(DoubleProperty share) {
    super(8);
    this.share = share;
    Button grey = new Button(SpotsWords.GREY);
    grey.setOnAction(event -> share.set(Card.GREY));
    Button white = new Button(SpotsWords.WHITE);
    white.setOnAction(event -> share.set(Card.WHITE));
    percent.setPrefColumnCount(4);
    percent.setAccessibleText(SpotsWords.CARD_PERCENT);
    share.addListener(changed -> show());
    show();
    Label unit = new Label(SpotsWords.OF_LIGHT);
    for (Region part : List.of(percent, unit, grey, white)) {
      part.setMinWidth(Region.USE_PREF_SIZE);
    }
    getChildren().setAll(percent, unit, grey, white);
    setAlignment(Pos.CENTER_LEFT);
  }

  /** What is wrong with what was typed; empty if nothing. */
  public ObservableValue<String> problemProperty() {
    return percent.problemProperty();
  }

  private void show() {
    percent.show(TypedNumber.write(100 * share.get(), 1));
  }

  private String typed(String text) {
    OptionalDouble read = TypedNumber.read(text);
    if (read.isEmpty() || !(read.getAsDouble() >= 2 && read.getAsDouble() <= 98)) {
      return SpotsWords.CARD_WRONG;
    }
    share.set(read.getAsDouble() / 100);
    return "";
  }
}
