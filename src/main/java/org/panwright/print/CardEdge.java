package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import org.panwright.print.FittedText.Align;
import org.panwright.words.CardWords;

/**
 * The heading or the foot of a card's front.
 *
 * @param limitMm how far it reaches from its edge of the card: the height where the map may begin
 *     or must end
 */
record CardEdge(double limitMm, List<Mark> marks) {
  /** Cards lower than this have no heading. */
  private static final double HEADING_FROM_MM = 34;

  private static final double SMALL_PT = TextFit.LEGIBLE_PT;
  private static final double FOOT_PT = 5.5;
  private static final double BETWEEN_MM = 3;

  CardEdge {
    marks = List.copyOf(marks);
  }

  /** Lineup, box and date: side by side, or under each other on a narrow card. */
  static CardEdge heading(CardContent content, Area inside) {
    if (inside.heightMm() < HEADING_FROM_MM) {
      return new CardEdge(inside.yMm(), List.of());
    }
    double width = inside.widthMm();
    double pt = Math.min(13, Math.max(7.5, 0.11 * inside.heightMm()));
    TextFit sidePt = TextFit.of(Typeface.REGULAR, Math.max(5.5, 0.7 * pt));
    String boxAndDate = CardWords.boxAndDate(content.box().name(), content.date());
    FittedText title = TextFit.of(Typeface.BOLD, pt).line(content.lineup(), 0.55 * width);
    FittedText side = sidePt.line(boxAndDate, width - title.widthMm() - BETWEEN_MM);
    if (!title.cut() && !side.cut()) {
      double drop = Math.max(0, title.baselineMm() - side.baselineMm());
      List<Mark> marks =
          new ArrayList<>(title.as(Role.HEADING, inside.xMm(), inside.yMm(), width, Align.LEFT));
      marks.addAll(side.as(Role.PARAGRAPH, inside.xMm(), inside.yMm() + drop, width, Align.RIGHT));
      return new CardEdge(inside.yMm() + Math.max(title.heightMm(), drop + side.heightMm()), marks);
    }
    FittedText above = TextFit.of(Typeface.BOLD, pt).line(content.lineup(), width);
    FittedText below = sidePt.line(boxAndDate, width);
    List<Mark> marks =
        new ArrayList<>(above.as(Role.HEADING, inside.xMm(), inside.yMm(), width, Align.LEFT));
    double y = inside.yMm() + above.heightMm();
    marks.addAll(below.as(Role.PARAGRAPH, inside.xMm(), y, width, Align.LEFT));
    return new CardEdge(y + below.heightMm(), marks);
  }

  /** Orientation, above it the small print or the word where to find it. */
  static CardEdge foot(CardContent content, Area inside, boolean smallPrint) {
    double width = inside.widthMm();
    TextFit fit = TextFit.of(Typeface.REGULAR, FOOT_PT);
    FittedText whole = fit.line(content.orientation(), width);
    FittedText hinge = whole.cut() ? fit.line(CardWords.HINGE, width) : whole;
    double y = inside.bottomMm() - hinge.heightMm();
    if (!smallPrint) {
      FittedText list = fit.line(CardWords.SEE_LIST, width);
      if (list.widthMm() + BETWEEN_MM + hinge.widthMm() <= width) {
        List<Mark> marks =
            new ArrayList<>(list.as(Role.PARAGRAPH, inside.xMm(), y, width, Align.LEFT));
        marks.addAll(hinge.as(Role.PARAGRAPH, inside.xMm(), y, width, Align.RIGHT));
        return new CardEdge(y, marks);
      }
      List<Mark> marks =
          new ArrayList<>(hinge.as(Role.PARAGRAPH, inside.xMm(), y, width, Align.CENTRE));
      if (inside.heightMm() >= HEADING_FROM_MM) {
        y -= list.heightMm();
        marks.addAll(list.as(Role.PARAGRAPH, inside.xMm(), y, width, Align.CENTRE));
      }
      return new CardEdge(y, marks);
    }
    List<Mark> marks =
        new ArrayList<>(hinge.as(Role.PARAGRAPH, inside.xMm(), y, width, Align.CENTRE));
    TextFit small = TextFit.of(Typeface.REGULAR, Math.min(7, Math.max(SMALL_PT, width / 24)));
    List<String> lines = content.smallPrint();
    for (int i = lines.size() - 1; i >= 0; i--) {
      FittedText text = small.paragraph(lines.get(i), width);
      y -= text.heightMm() + 0.3;
      marks.addAll(text.as(Role.PARAGRAPH, inside.xMm(), y, width, Align.LEFT));
    }
    return new CardEdge(y, marks);
  }
}
