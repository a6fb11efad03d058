package org.panwright.print;

import java.util.List;
import java.util.Optional;
import org.panwright.colour.Srgb;

/** Sheets without colour. */
final class GreyPrint {
  private GreyPrint() {}

  static Sheet of(Sheet sheet) {
    return new Sheet(
        sheet.title(),
        sheet.widthMm(),
        sheet.heightMm(),
        sheet.marks().stream().map(GreyPrint::of).toList());
  }

  private static Mark of(Mark mark) {
    if (mark instanceof Mark.Group g) {
      return new Mark.Group(g.role(), g.words(), g.marks().stream().map(GreyPrint::of).toList());
    }
    if (mark instanceof Mark.Text t) {
      return new Mark.Text(
          t.face(), t.sizePt(), t.xMm(), t.baselineMm(), t.upwards(), grey(t.ink()), t.text());
    }
    if (mark instanceof Mark.Line l) {
      return new Mark.Line(
          l.fromXMm(), l.fromYMm(), l.toXMm(), l.toYMm(), l.strokeMm(), grey(l.ink()), l.dashed());
    }
    if (mark instanceof Mark.Rectangle r) {
      Optional<Srgb> fill = r.fill().map(GreyPrint::grey);
      return new Mark.Rectangle(
          r.area(), r.radiusMm(), r.strokeMm(), grey(r.ink()), r.dashed(), fill);
    }
    Mark.Swatch s = (Mark.Swatch) mark;
    List<Srgb> run = s.run().stream().map(GreyPrint::grey).toList();
    return new Mark.Swatch(s.area(), run);
  }

  /** The grey of the same luminance Y. */
  static Srgb grey(Srgb colour) {
    double level = Math.min(1, Math.max(0, Srgb.encode(colour.toXyzD65().y())));
    return new Srgb(level, level, level);
  }
}
