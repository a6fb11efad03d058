package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import org.panwright.print.FittedText.Align;
import org.panwright.words.CardWords;

/** The list of a key card: every well by its label with all that is known, and the small print. */
final class CardList {
  private static final double COLUMN_MM = 95;
  private static final double COLUMN_GAP_MM = 4;
  private static final double PT = 6;
  private static final double WIDEST_LABEL_MM = 14;
  private static final double SWATCH_MM = 8;
  private static final double MARKS_MM = 15;
  private static final double FILL_MM = 6;
  private static final double GAP_MM = 1;
  private static final int NAME_LINES = 3;
  private static final double LEAST_WIDTH_MM = 85;
  private static final double LEAST_HEIGHT_MM = 55;
  private static final double TALLEST_MM = 150;
  private static final double STEP_MM = 5;

  private final CardContent content;
  private final Area size;
  private final Area inside;
  private final double columnMm;
  private final int columns;
  private final double labelMm;

  /**
   * The faces of the list that goes with a card: of the card's own width, no narrower than a bank
   * card, and as tall as the card or, up to {@link #TALLEST_MM}, taller if that makes it one face
   * or saves a sheet.
   */
  static List<Face> faces(CardContent content, Area card, List<Face> front, SheetLayout layout) {
    double width = Math.max(LEAST_WIDTH_MM, card.widthMm());
    double height = Math.max(LEAST_HEIGHT_MM, card.heightMm());
    Area usual = layout.clippedBeside(card, new Area(0, 0, width, height));
    List<Face> best = new CardList(content, usual).faces();
    int fewest = sheets(front, best, layout);
    for (double tall = height; best.size() > 1 && tall <= TALLEST_MM; tall += STEP_MM) {
      Area area = layout.clippedBeside(card, new Area(0, 0, width, tall));
      List<Face> faces = new CardList(content, area).faces();
      int sheets = sheets(front, faces, layout);
      if (faces.size() == 1 || sheets < fewest) {
        best = faces;
        fewest = sheets;
      }
    }
    return best;
  }

  private static int sheets(List<Face> front, List<Face> list, SheetLayout layout) {
    List<Face> all = new ArrayList<>(front);
    all.addAll(list);
    return layout.papers("", all, List.of()).sheets().size();
  }

  /** Whether a list can be read on a card of this size. */
  static boolean fits(Area card) {
    return card.widthMm() >= LEAST_WIDTH_MM && card.heightMm() >= LEAST_HEIGHT_MM;
  }

  CardList(CardContent content, Area size) {
    this.content = content;
    this.size = size;
    inside = size.inset(Math.min(5, Math.max(1.5, 0.03 * size.heightMm())));
    columns = (int) Math.max(1, Math.floor(inside.widthMm() / COLUMN_MM));
    labelMm =
        GAP_MM
            + content.wells().stream()
                .map(well -> Script.printable(well.well().label()))
                .mapToDouble(label -> Typeface.BOLD.widthMm(label, PT))
                .map(wide -> Math.min(wide, WIDEST_LABEL_MM))
                .max()
                .orElse(0);
    columnMm = (inside.widthMm() - (columns - 1) * COLUMN_GAP_MM) / columns;
  }

  /** One piece of the list that stays whole. */
  private record Item(double heightMm, List<Mark> marks) {}

  /** The faces the list takes, at least one. */
  List<Face> faces() {
    double headingMm = Typeface.leadingMm(8) + 1;
    double roomMm = inside.heightMm() - headingMm;
    List<List<Mark>> bodies = new ArrayList<>();
    List<Mark> body = new ArrayList<>();
    int column = 0;
    double y = 0;
    for (Item item : items()) {
      if (y > 0 && y + item.heightMm() > roomMm) {
        column++;
        y = 0;
      }
      if (column == columns) {
        bodies.add(body);
        body = new ArrayList<>();
        column = 0;
      }
      double x = inside.xMm() + column * (columnMm + COLUMN_GAP_MM);
      body.addAll(new Face(0, 0, item.marks()).at(x, inside.yMm() + headingMm + y));
      y += item.heightMm();
    }
    bodies.add(body);
    List<Face> faces = new ArrayList<>();
    for (int i = 0; i < bodies.size(); i++) {
      List<Mark> marks = new ArrayList<>();
      String title = CardWords.listTitle(content.lineup(), i + 1, bodies.size());
      marks.addAll(
          TextFit.of(Typeface.BOLD, 8)
              .line(title, inside.widthMm())
              .as(Role.HEADING, inside.xMm(), inside.yMm(), inside.widthMm(), Align.LEFT));
      marks.addAll(bodies.get(i));
      faces.add(new Face(size.widthMm(), size.heightMm(), marks));
    }
    return faces;
  }

  private List<Item> items() {
    List<Item> items = new ArrayList<>();
    content.wells().forEach(well -> items.add(row(well)));
    if (!content.mixes().isEmpty()) {
      FittedText heading = TextFit.of(Typeface.BOLD, PT).line(CardWords.MIXES, columnMm);
      items.add(
          new Item(
              heading.heightMm() + 1.6, heading.as(Role.HEADING, 0, 1.2, columnMm, Align.LEFT)));
      content.mixes().forEach(mix -> items.add(row(mix)));
    }
    for (String line : content.smallPrint()) {
      FittedText text = TextFit.of(Typeface.REGULAR, 5.25).paragraph(line, columnMm);
      items.add(
          new Item(text.heightMm() + 0.8, text.as(Role.PARAGRAPH, 0, 0.8, columnMm, Align.LEFT)));
    }
    return items;
  }

  private Item row(CardMix mix) {
    double line = Typeface.leadingMm(PT);
    double top = 0.5;
    Area field = new Area(0, top, SWATCH_MM, line);
    double x = SWATCH_MM + GAP_MM;
    FittedText text =
        TextFit.of(Typeface.REGULAR, PT).within(mix.words(), columnMm - x, NAME_LINES * line);
    List<Mark> marks = new ArrayList<>();
    marks.add(
        content.isPredicted() ? PaintMarks.swatch(mix.look(), field) : PaintMarks.outline(field));
    marks.addAll(text.at(x, top, columnMm - x, Align.LEFT));
    double height = Math.max(line, text.heightMm()) + 2 * top;
    return new Item(height, ruled(marks, height));
  }

  private Item row(CardWell well) {
    List<Mark> marks = new ArrayList<>();
    double line = Typeface.leadingMm(PT);
    double top = 0.5;
    marks.addAll(
        TextFit.of(Typeface.BOLD, PT)
            .line(well.well().label(), labelMm - GAP_MM)
            .at(0, top, labelMm, Align.LEFT));
    double x = labelMm;
    if (well.filled().isEmpty()) {
      marks.addAll(
          TextFit.of(Typeface.REGULAR, PT)
              .line(CardWords.EMPTY_WELL, columnMm - x)
              .at(x, top, columnMm - x, Align.LEFT));
      return new Item(line + 2 * top, ruled(marks, line + 2 * top));
    }
    CardWell.Filled filled = well.filled().get();
    if (content.isPredicted()) {
      marks.add(
          PaintMarks.swatch(
              filled.paint().name(), filled.run(), new Area(x, top, SWATCH_MM, line)));
      x += SWATCH_MM + GAP_MM;
    }
    double tailMm = MARKS_MM + FILL_MM + 2 * GAP_MM;
    double textMm = columnMm - x - tailMm;
    double nameMm = 0.62 * textMm;
    FittedText name =
        TextFit.of(Typeface.REGULAR, PT)
            .within(filled.paint().name(), nameMm - GAP_MM, NAME_LINES * line);
    FittedText codes =
        TextFit.of(Typeface.REGULAR, PT)
            .within(filled.paint().codes(), textMm - nameMm, NAME_LINES * line);
    marks.addAll(name.at(x, top, nameMm, Align.LEFT));
    marks.addAll(codes.at(x + nameMm, top, textMm - nameMm, Align.LEFT));
    double tail = columnMm - tailMm + GAP_MM;
    marks.addAll(PaintMarks.properties(filled.paint().handling(), tail, top, MARKS_MM / 4, PT));
    marks.addAll(
        TextFit.of(Typeface.REGULAR, PT)
            .line(CardWords.fill(filled.fill()), FILL_MM)
            .at(columnMm - FILL_MM, top, FILL_MM, Align.RIGHT));
    double height = Math.max(line, Math.max(name.heightMm(), codes.heightMm())) + 2 * top;
    return new Item(height, ruled(marks, height));
  }

  private List<Mark> ruled(List<Mark> marks, double heightMm) {
    marks.add(new Mark.Line(0, heightMm, columnMm, heightMm, 0.1, Ink.FAINT, false));
    return Mark.Group.of(Role.PARAGRAPH, marks);
  }
}
