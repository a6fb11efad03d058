package org.panwright.print;

import java.util.List;

/** One side of a card: marks in millimetres from its own upper left corner. */
record Face(double widthMm, double heightMm, List<Mark> marks) {
  Face {
    marks = List.copyOf(marks);
  }

  /** The marks with the face's corner at a place on a sheet. */
  List<Mark> at(double xMm, double yMm) {
    return marks.stream().map(mark -> moved(mark, xMm, yMm)).toList();
  }

  private static Mark moved(Mark mark, double dx, double dy) {
    if (mark instanceof Mark.Group g) {
      return new Mark.Group(
          g.role(), g.words(), g.marks().stream().map(part -> moved(part, dx, dy)).toList());
    }
    if (mark instanceof Mark.Text t) {
      return new Mark.Text(
          t.face(), t.sizePt(), t.xMm() + dx, t.baselineMm() + dy, t.upwards(), t.ink(), t.text());
    }
    if (mark instanceof Mark.Line l) {
      return new Mark.Line(
          l.fromXMm() + dx,
          l.fromYMm() + dy,
          l.toXMm() + dx,
          l.toYMm() + dy,
          l.strokeMm(),
          l.ink(),
          l.dashed());
    }
    if (mark instanceof Mark.Rectangle r) {
      return new Mark.Rectangle(
          r.area().moved(dx, dy), r.radiusMm(), r.strokeMm(), r.ink(), r.dashed(), r.fill());
    }
    Mark.Swatch s = (Mark.Swatch) mark;
    return new Mark.Swatch(s.area().moved(dx, dy), s.run());
  }
}
