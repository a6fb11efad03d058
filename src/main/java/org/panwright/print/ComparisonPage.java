package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import org.panwright.analysis.compare.Comparison;
import org.panwright.analysis.compare.SubjectPair;
import org.panwright.analysis.judge.Judgement;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.print.FittedText.Align;
import org.panwright.words.CompareWords;
import org.panwright.words.ComparisonWords;

/**
 * Two lineups side by side on one page: boxes, grids, rings, what is won and lost, what to move.
 * Only sentences for which a page has no room, as of two large boxes without a paint in common, go
 * on to another.
 */
public final class ComparisonPage {
  private static final double GUTTER_MM = 6;
  private static final double NAME_MM = 5;
  private static final double BOX_MM = 50;
  private static final double RING_MM = 64;
  private static final double LEAST_GRID_MM = 30;

  private final Judgement first;
  private final Judgement second;
  private final String firstName;
  private final String secondName;
  private final List<SubjectPair> subjects;
  private final Comparison comparison;

  private ComparisonPage(
      Judgement first,
      Judgement second,
      String firstName,
      String secondName,
      List<SubjectPair> subjects) {
    this.first = first;
    this.second = second;
    this.firstName = firstName;
    this.secondName = secondName;
    this.subjects = subjects;
    comparison = Comparison.of(first, second);
  }

  /**
   * The page for two judged lineups.
   *
   * @param subjects how near both come to the colours of a place; may be empty
   */
  public static Papers of(
      Judgement first,
      Judgement second,
      String firstName,
      String secondName,
      List<SubjectPair> subjects,
      PaperFormat paper) {
    return new ComparisonPage(first, second, firstName, secondName, subjects).papers(paper);
  }

  private Papers papers(PaperFormat paper) {
    PageFrame frame = PageFrame.upright(paper);
    Area room = frame.room();
    double width = (room.widthMm() - GUTTER_MM) / 2;
    double right = room.xMm() + width + GUTTER_MM;
    double top = room.yMm();
    List<Mark> marks = new ArrayList<>();
    marks.addAll(name(firstName, room.xMm(), top, width));
    marks.addAll(name(secondName, right, top, width));
    top += NAME_MM;
    marks.addAll(ComparedBox.of(first, firstName, new Area(room.xMm(), top, width, BOX_MM)));
    marks.addAll(ComparedBox.of(second, secondName, new Area(right, top, width, BOX_MM)));
    top += BOX_MM + 3;
    List<String> paints = new ArrayList<>(comparison.inCommon());
    paints.addAll(comparison.leaving());
    paints.addAll(comparison.coming());
    double grid = Math.max(LEAST_GRID_MM, ComparedGrid.heightMm(paints.size(), width));
    marks.addAll(ComparedGrid.of(first, firstName, paints, new Area(room.xMm(), top, width, grid)));
    marks.addAll(ComparedGrid.of(second, secondName, paints, new Area(right, top, width, grid)));
    top += grid + 1.5;
    marks.addAll(
        ComparedSamples.of(
            comparison.onlyFirst(),
            firstName,
            new Area(room.xMm(), top, width, ComparedSamples.HEIGHT_MM)));
    marks.addAll(
        ComparedSamples.of(
            comparison.onlySecond(),
            secondName,
            new Area(right, top, width, ComparedSamples.HEIGHT_MM)));
    top += ComparedSamples.HEIGHT_MM + 3;
    marks.addAll(
        ComparedRings.of(
            first,
            second,
            comparison,
            CompareWords.ringFigure(firstName, secondName),
            new Area(room.xMm(), top, RING_MM, RING_MM)));
    double below = top + RING_MM + 1;
    double textLeft = room.xMm() + RING_MM + GUTTER_MM;
    double column = (room.rightMm() - textLeft - GUTTER_MM) / 2;
    double height = room.bottomMm() - top;
    ComparedText text = new ComparedText();
    marks.addAll(
        text.within(
            List.of(hues()), new Area(room.xMm(), below, RING_MM, room.bottomMm() - below)));
    List<ComparedText.Part> parts = new ArrayList<>(findings());
    parts.addAll(moves());
    marks.addAll(
        text.within(
            parts,
            new Area(textLeft, top, column, height),
            new Area(textLeft + column + GUTTER_MM, top, column, height)));
    String title = CompareWords.pageTitle(firstName, secondName);
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(frame.sheet(title, List.of(), marks));
    text.beyond(room).forEach(page -> sheets.add(frame.sheet(title, List.of(), page)));
    return new Papers(title, sheets);
  }

  private static List<Mark> name(String name, double xMm, double topMm, double widthMm) {
    return TextFit.of(Typeface.BOLD, 9)
        .line(name, widthMm)
        .as(Role.HEADING, xMm, topMm, widthMm, Align.LEFT);
  }

  private ComparedText.Part hues() {
    List<String> sentences = new ArrayList<>(List.of(CompareWords.PRINTED_RING_KEY));
    sentences.addAll(ComparisonWords.hues(comparison));
    return new ComparedText.Part(CompareWords.HUES, sentences);
  }

  private List<ComparedText.Part> findings() {
    List<ComparedText.Part> parts = new ArrayList<>();
    parts.add(part(CompareWords.COLOURS, ComparisonWords.reach(comparison, firstName, secondName)));
    parts.add(part(CompareWords.DARKS, ComparisonWords.darks(comparison, firstName, secondName)));
    if (!subjects.isEmpty()) {
      parts.add(
          new ComparedText.Part(
              CompareWords.SUBJECTS,
              ComparisonWords.subjects(subjects, first, second, firstName, secondName)));
    }
    parts.add(
        new ComparedText.Part(
            CompareWords.CAUTIONS, ComparisonWords.cautions(first, second, firstName, secondName)));
    return parts;
  }

  private List<ComparedText.Part> moves() {
    Kit kit = first.kit();
    Lineup lineup = kit.lineup(first.lineupId()).orElseThrow();
    return List.of(
        new ComparedText.Part(
            CompareWords.PAINTS, ComparisonWords.paints(comparison, kit, firstName, secondName)),
        new ComparedText.Part(
            CompareWords.MOVES, ComparisonWords.moves(comparison, kit, kit.boxOf(lineup))));
  }

  private static ComparedText.Part part(String heading, String sentence) {
    return new ComparedText.Part(heading, List.of(sentence));
  }
}
