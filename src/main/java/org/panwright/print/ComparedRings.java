package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import org.panwright.analysis.compare.Comparison;
import org.panwright.analysis.judge.Judgement;
import org.panwright.analysis.reach.Ring;
import org.panwright.colour.GamutFit;
import org.panwright.colour.Hue;
import org.panwright.colour.Oklch;
import org.panwright.colour.Srgb;

/** Two hue rings over each other: the first grey and thick, the second black, with marked arcs. */
final class ComparedRings {
  private static final double FULL_CHROMA = 0.24;
  private static final double RIM_MM = 2.2;

  private final double centreX;
  private final double centreY;
  private final double radius;

  private ComparedRings(Area area) {
    centreX = area.xMm() + area.widthMm() / 2;
    centreY = area.yMm() + area.heightMm() / 2;
    radius = Math.min(area.widthMm(), area.heightMm()) / 2 - RIM_MM;
  }

  static List<Mark> of(
      Judgement first, Judgement second, Comparison comparison, String words, Area area) {
    ComparedRings drawn = new ComparedRings(area);
    List<Mark> marks = new ArrayList<>();
    for (int step = 0; step < Ring.STEPS; step++) {
      double hue = step * Ring.STEP_DEG;
      Srgb ink = GamutFit.of(new Oklch(0.74, 0.13, hue)).shown();
      marks.add(drawn.line(hue - 2.6, hue + 2.6, drawn.radius + RIM_MM / 2, RIM_MM, ink));
    }
    drawn.outline(marks, first.ring(), 0.8, Ink.FAINT);
    drawn.outline(marks, second.ring(), 0.3, Ink.BLACK);
    comparison.lost().forEach(arc -> drawn.arc(marks, arc, drawn.radius - 1, 0.8, Ink.LINE));
    comparison.won().forEach(arc -> drawn.arc(marks, arc, drawn.radius - 3, 0.8, Ink.BLACK));
    return List.of(new Mark.Group(Role.FIGURE, words, marks));
  }

  private void outline(List<Mark> marks, Ring ring, double strokeMm, Srgb ink) {
    for (int step = 0; step < Ring.STEPS; step++) {
      int next = (step + 1) % Ring.STEPS;
      double from = distance(ring.chroma(step));
      double to = distance(ring.chroma(next));
      double hue = step * Ring.STEP_DEG;
      marks.add(
          new Mark.Line(
              x(hue, from),
              y(hue, from),
              x(hue + Ring.STEP_DEG, to),
              y(hue + Ring.STEP_DEG, to),
              strokeMm,
              ink,
              false));
    }
  }

  private void arc(
      List<Mark> marks, Comparison.Shift shift, double distance, double strokeMm, Srgb ink) {
    double arc = Hue.arc(shift.fromDeg(), shift.toDeg());
    double length = arc == 0 ? 360 : arc;
    for (double way = 0; way < length; way += Ring.STEP_DEG) {
      double from = shift.fromDeg() + way;
      marks.add(line(from, from + Math.min(Ring.STEP_DEG, length - way), distance, strokeMm, ink));
    }
  }

  private Mark line(double fromDeg, double toDeg, double distance, double strokeMm, Srgb ink) {
    return new Mark.Line(
        x(fromDeg, distance),
        y(fromDeg, distance),
        x(toDeg, distance),
        y(toDeg, distance),
        strokeMm,
        ink,
        false);
  }

  private double distance(double chroma) {
    return radius * Math.min(1, chroma / FULL_CHROMA);
  }

  private double x(double hueDeg, double distance) {
    return centreX + distance * Math.cos(Math.toRadians(hueDeg));
  }

  private double y(double hueDeg, double distance) {
    return centreY - distance * Math.sin(Math.toRadians(hueDeg));
  }
}
