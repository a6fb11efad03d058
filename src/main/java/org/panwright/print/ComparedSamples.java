package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.colour.GamutFit;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.print.FittedText.Align;
import org.panwright.words.ColourWords;
import org.panwright.words.CompareWords;

/** A row of colours only one of two lineups mixes, under its grid. */
final class ComparedSamples {
  /** The height of the row. */
  static final double HEIGHT_MM = 5;

  private static final double LABEL_MM = 15;
  private static final double TEXT_PT = 6;
  private static final double GAP_MM = 0.6;

  private ComparedSamples() {}

  static List<Mark> of(List<Lab> colours, String lineup, Area area) {
    String said = colours.isEmpty() ? CompareWords.NONE_ONLY_HERE : CompareWords.ONLY_HERE;
    double textWidth = colours.isEmpty() ? area.widthMm() : LABEL_MM;
    FittedText label = TextFit.of(Typeface.REGULAR, TEXT_PT).line(said, textWidth);
    double textTop = area.yMm() + (area.heightMm() - label.heightMm()) / 2;
    List<Mark> marks =
        new ArrayList<>(label.as(Role.PARAGRAPH, area.xMm(), textTop, textWidth, Align.LEFT));
    double each = Math.min(HEIGHT_MM, (area.widthMm() - LABEL_MM) / Math.max(1, colours.size()));
    List<Mark> swatches = new ArrayList<>();
    for (int i = 0; i < colours.size(); i++) {
      Area place =
          new Area(area.xMm() + LABEL_MM + i * each, area.yMm(), each - GAP_MM, area.heightMm());
      swatches.add(
          new Mark.Swatch(
              place, List.of(GamutFit.ofXyzD65(colours.get(i).toXyz(Light.D65.white())).shown())));
      swatches.add(new Mark.Rectangle(place, 0, 0.08, Ink.FAINT, false, Optional.empty()));
    }
    if (!swatches.isEmpty()) {
      List<String> looks = colours.stream().map(ComparedSamples::look).toList();
      marks.add(new Mark.Group(Role.FIGURE, CompareWords.samplesFigure(lineup, looks), swatches));
    }
    return marks;
  }

  private static String look(Lab colour) {
    return ColourWords.describe(Oklab.ofD65(colour.toXyz(Light.D65.white())).toOklch());
  }
}
