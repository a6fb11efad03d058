package org.panwright.app.mix;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.app.fx.Swatches;
import org.panwright.colour.Lab;
import org.panwright.words.MixWords;

/** The mix large: the dry colour and, beside it, the same coat while wet. */
final class WetAndDry extends CanvasRegion {
  private static final double WORDS = 16;

  private Lab dry = new Lab(100, 0, 0);
  private Lab wet = new Lab(100, 0, 0);

  WetAndDry() {
    getStyleClass().add("wet-and-dry");
    setMinHeight(76);
    setPrefHeight(104);
  }

  void show(Lab dryColour, Lab wetColour) {
    dry = dryColour;
    wet = wetColour;
    repaint();
  }

  @Override
  protected void paint(GraphicsContext pen, double width, double height) {
    pen.setFill(surround());
    pen.fillRect(0, 0, width, height - WORDS);
    double split = Math.round(width * 0.68);
    swatch(pen, dry, MixWords.DRY, 6, split - 6, height);
    swatch(pen, wet, MixWords.WET, split, width - split - 6, height);
  }

  private void swatch(
      GraphicsContext pen, Lab lab, String word, double x, double width, double height) {
    pen.setFill(Swatches.color(lab));
    pen.fillRect(x, 6, width, height - WORDS - 12);
    pen.setFill(soft());
    pen.setFont(Font.font(10.5));
    pen.setTextAlign(TextAlignment.CENTER);
    pen.setTextBaseline(VPos.BOTTOM);
    pen.fillText(word, x + width / 2, height);
  }
}
