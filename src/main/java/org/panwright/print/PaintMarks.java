package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.colour.GamutFit;
import org.panwright.colour.Oklab;
import org.panwright.colour.Srgb;
import org.panwright.paint.Handling;
import org.panwright.print.FittedText.Align;
import org.panwright.words.CardWords;
import org.panwright.words.ColourWords;
import org.panwright.words.PaintWords;

/** How a paint's run of washes and its properties are drawn, in cells and in lists alike. */
final class PaintMarks {
  private PaintMarks() {}

  /**
   * A predicted swatch with its outline, and a sign where the print falls short.
   *
   * @param paint its name, for who has the sheet read
   */
  static Mark swatch(String paint, WashRun run, Area field) {
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Swatch(field, run.colours()));
    marks.add(outline(field));
    double pt = TextFit.LEGIBLE_PT;
    double width = Typeface.BOLD.widthMm(CardWords.BEYOND_PRINT, pt);
    double height = Typeface.BOLD.ascentMm(pt) + Typeface.BOLD.descentMm(pt);
    if (!run.exact() && field.widthMm() > width + 1 && field.heightMm() > height + 0.2) {
      Srgb last = run.colours().get(run.colours().size() - 1);
      marks.add(
          new Mark.Text(
              Typeface.BOLD,
              pt,
              field.rightMm() - width - 0.4,
              field.yMm() + 0.1 + Typeface.BOLD.ascentMm(pt),
              false,
              Ink.on(last),
              CardWords.BEYOND_PRINT));
    }
    return new Mark.Group(Role.FIGURE, words(paint, run.colours()), marks);
  }

  /** A predicted swatch of one colour with its outline. */
  static Mark swatch(GamutFit look, Area field) {
    return new Mark.Group(
        Role.FIGURE,
        CardWords.mixSwatch(look(look.shown())),
        List.of(new Mark.Swatch(field, List.of(look.shown())), outline(field)));
  }

  private static String words(String paint, List<Srgb> run) {
    return CardWords.swatch(
        Script.printable(paint), look(run.get(0)), look(run.get(run.size() - 1)));
  }

  /** A printed colour in words. */
  static String look(Srgb colour) {
    return ColourWords.describe(Oklab.ofD65(colour.toXyzD65()).toOklch());
  }

  /** The outline of a swatch or of a field to paint. */
  static Mark outline(Area field) {
    return new Mark.Rectangle(field, 0, 0.12, Ink.LINE, false, Optional.empty());
  }

  /** The four properties in words, one under the other. */
  static List<Mark> propertiesInWords(
      Handling handling, double xMm, double topMm, double widthMm, double pt) {
    List<Mark> marks = new ArrayList<>();
    double top = topMm;
    for (String words :
        List.of(
            PaintWords.label(handling.transparency()),
            PaintWords.label(handling.staining()),
            CardWords.granulation(handling.granulation()),
            CardWords.lightfastness(handling.lightfastness()))) {
      marks.addAll(
          TextFit.of(Typeface.REGULAR, pt).line(words, widthMm).at(xMm, top, widthMm, Align.LEFT));
      top += Typeface.leadingMm(pt);
    }
    return marks;
  }

  /** The four marks of a paint's properties, each in a column of its own. */
  static List<Mark> properties(
      Handling handling, double xMm, double topMm, double columnMm, double pt) {
    List<String> texts =
        List.of(
            PaintWords.mark(handling.transparency()),
            PaintWords.mark(handling.staining()),
            PaintWords.mark(handling.granulation()),
            PaintWords.mark(handling.lightfastness()));
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      FittedText mark = TextFit.of(Typeface.REGULAR, pt).line(texts.get(i), columnMm);
      marks.addAll(mark.at(xMm + i * columnMm, topMm, columnMm, Align.LEFT));
    }
    return marks;
  }
}
