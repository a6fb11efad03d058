package org.panwright.print;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.panwright.words.CardWords;

/** Places cards on sheets of paper, several side by side, with cut marks. */
final class SheetLayout {
  private static final double GAP_MM = 7;
  private static final double CUT_MM = 2.4;
  private static final double CUT_OFF_MM = 1;

  private final PaperFormat paper;

  SheetLayout(PaperFormat paper) {
    this.paper = paper;
  }

  /** The largest card not above {@code wanted} that goes on the paper. */
  Area clipped(Area wanted) {
    if (fits(wanted, PageFrame.upright(paper)) || fits(wanted, PageFrame.lying(paper))) {
      return wanted;
    }
    Area room =
        (wanted.widthMm() >= wanted.heightMm() ? PageFrame.lying(paper) : PageFrame.upright(paper))
            .room();
    return new Area(
        0,
        0,
        Math.min(wanted.widthMm(), room.widthMm()),
        Math.min(wanted.heightMm(), room.heightMm()));
  }

  /** The largest area not above {@code wanted} that goes on a page the card goes on too. */
  Area clippedBeside(Area card, Area wanted) {
    Area largest = new Area(0, 0, 0, 0);
    for (PageFrame page : List.of(PageFrame.upright(paper), PageFrame.lying(paper))) {
      if (fits(card, page)) {
        Area clipped =
            new Area(
                0,
                0,
                Math.min(wanted.widthMm(), page.room().widthMm()),
                Math.min(wanted.heightMm(), page.room().heightMm()));
        largest = size(clipped) > size(largest) ? clipped : largest;
      }
    }
    return largest;
  }

  private static double size(Area area) {
    return area.widthMm() * area.heightMm();
  }

  private static boolean fits(Area card, PageFrame page) {
    Area room = page.room();
    return card.widthMm() <= room.widthMm() && card.heightMm() <= room.heightMm();
  }

  /** The papers that hold these faces in their order. */
  Papers papers(String lineup, List<Face> faces, List<String> notes) {
    PageFrame page = page(faces);
    List<List<Mark>> bodies = packed(faces, page);
    List<Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < bodies.size(); i++) {
      String title = CardWords.sheetTitle(lineup, i + 1, bodies.size());
      sheets.add(page.sheet(title, notes, bodies.get(i)));
    }
    return new Papers(CardWords.title(lineup), sheets);
  }

  /**
   * Papers to print on both sides: copies of a card with its first back behind each, where the
   * sheet is turned over as a page of a book is. Further backs follow as cards of their own.
   *
   * @param backs at least one, of the card's size
   */
  Papers turned(String lineup, Face front, List<Face> backs, int copies, List<String> notes) {
    List<Face> fronts = Collections.nCopies(copies, front);
    PageFrame page = page(fronts);
    List<String> told = new ArrayList<>(notes);
    told.add(CardWords.turn(page.heightMm() >= page.widthMm()));
    List<Sheet> sheets = new ArrayList<>();
    List<List<Packing.Placed>> pages = Packing.pages(page.room(), GAP_MM, fronts);
    for (int i = 0; i < pages.size(); i++) {
      List<Mark> fore = new ArrayList<>();
      List<Mark> behind = new ArrayList<>();
      for (Packing.Placed card : pages.get(i)) {
        fore.addAll(card.marks());
        fore.addAll(cutMarks(card.area()));
        double x = page.widthMm() - card.area().rightMm();
        behind.addAll(new Packing.Placed(backs.get(0), x, card.yMm()).marks());
      }
      String title = CardWords.sheetTitle(lineup, i + 1, pages.size());
      sheets.add(page.sheet(title, told, fore));
      sheets.add(page.sheet(CardWords.backTitle(title), told, behind));
    }
    if (backs.size() > 1) {
      List<Face> further = new ArrayList<>();
      for (int copy = 0; copy < copies; copy++) {
        further.addAll(backs.subList(1, backs.size()));
      }
      for (List<Mark> body : packed(further, page)) {
        sheets.add(page.sheet(CardWords.title(lineup), notes, body));
      }
    }
    return new Papers(CardWords.title(lineup), sheets);
  }

  /** The way of the paper that takes fewer sheets. */
  private PageFrame page(List<Face> faces) {
    List<List<Mark>> upright = packed(faces, PageFrame.upright(paper));
    List<List<Mark>> lying = packed(faces, PageFrame.lying(paper));
    boolean isUpright = !upright.isEmpty() && (lying.isEmpty() || upright.size() <= lying.size());
    return isUpright ? PageFrame.upright(paper) : PageFrame.lying(paper);
  }

  /** The bodies of the pages, or none if a face is too large for the page. */
  private static List<List<Mark>> packed(List<Face> faces, PageFrame page) {
    for (Face face : faces) {
      if (!fits(new Area(0, 0, face.widthMm(), face.heightMm()), page)) {
        return List.of();
      }
    }
    List<List<Mark>> bodies = new ArrayList<>();
    for (List<Packing.Placed> placed : Packing.pages(page.room(), GAP_MM, faces)) {
      List<Mark> body = new ArrayList<>();
      for (Packing.Placed card : placed) {
        body.addAll(card.marks());
        body.addAll(cutMarks(card.area()));
      }
      bodies.add(body);
    }
    return bodies;
  }

  private static List<Mark> cutMarks(Area card) {
    List<Mark> marks = new ArrayList<>();
    for (double x : new double[] {card.xMm(), card.rightMm()}) {
      marks.add(cut(x, card.yMm() - CUT_OFF_MM - CUT_MM, x, card.yMm() - CUT_OFF_MM));
      marks.add(cut(x, card.bottomMm() + CUT_OFF_MM, x, card.bottomMm() + CUT_OFF_MM + CUT_MM));
    }
    for (double y : new double[] {card.yMm(), card.bottomMm()}) {
      marks.add(cut(card.xMm() - CUT_OFF_MM - CUT_MM, y, card.xMm() - CUT_OFF_MM, y));
      marks.add(cut(card.rightMm() + CUT_OFF_MM, y, card.rightMm() + CUT_OFF_MM + CUT_MM, y));
    }
    return marks;
  }

  private static Mark cut(double fromX, double fromY, double toX, double toY) {
    return new Mark.Line(fromX, fromY, toX, toY, 0.15, Ink.BLACK, false);
  }
}
