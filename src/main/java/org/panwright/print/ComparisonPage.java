package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import org.panwright.analysis.Comparison;
import org.panwright.analysis.Judgement;
import org.panwright.analysis.SubjectPair;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.print.FittedText.Align;
import org.panwright.words.CompareWords;
import org.panwright.words.ComparisonWords;

/**
 * Two lineups side by side on one page: boxes, grids, rings, what is won and lost, what to move.
 */
public final class ComparisonPage {
  private static final double GUTTER_MM = 6;
  private static final double NAME_MM = 5;
  private static final double BOX_MM = 50;
  private static final double RING_MM = 64;
  private static final double TEXT_PT = 7;
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
    top += grid + 3;
    marks.addAll(
        ComparedRings.of(
            first,
            second,
            comparison,
            CompareWords.ringFigure(firstName, secondName),
            new Area(room.xMm(), top, RING_MM, RING_MM)));
    double below = top + RING_MM + 1;
    marks.addAll(
        text(
            List.of(List.of(CompareWords.HUES), ComparisonWords.hues(comparison)),
            new Area(room.xMm(), below, RING_MM, Math.max(4, room.bottomMm() - below))));
    double textLeft = room.xMm() + RING_MM + GUTTER_MM;
    double column = (room.rightMm() - textLeft - GUTTER_MM) / 2;
    double height = room.bottomMm() - top;
    marks.addAll(text(findings(), new Area(textLeft, top, column, height)));
    marks.addAll(text(moves(), new Area(textLeft + column + GUTTER_MM, top, column, height)));
    String title = CompareWords.pageTitle(firstName, secondName);
    return new Papers(title, List.of(frame.sheet(title, List.of(), marks)));
  }

  private static List<Mark> name(String name, double xMm, double topMm, double widthMm) {
    return TextFit.of(Typeface.BOLD, 9)
        .line(name, widthMm)
        .as(Role.HEADING, xMm, topMm, widthMm, Align.LEFT);
  }

  /** Headings and their sentences in turn. */
  private List<List<String>> findings() {
    List<List<String>> parts = new ArrayList<>();
    parts.add(List.of(CompareWords.COLOURS));
    parts.add(List.of(ComparisonWords.reach(comparison, firstName, secondName)));
    parts.add(List.of(CompareWords.DARKS));
    parts.add(List.of(ComparisonWords.darks(comparison, firstName, secondName)));
    if (!subjects.isEmpty()) {
      parts.add(List.of(CompareWords.SUBJECTS));
      parts.add(
          subjects.stream()
              .map(pair -> ComparisonWords.subject(pair, firstName, secondName))
              .toList());
    }
    parts.add(List.of(CompareWords.CAUTIONS));
    parts.add(ComparisonWords.cautions(first, second, firstName, secondName));
    return parts;
  }

  private List<List<String>> moves() {
    Kit kit = first.kit();
    Lineup lineup = kit.lineup(first.lineupId()).orElseThrow();
    List<List<String>> parts = new ArrayList<>();
    parts.add(List.of(CompareWords.PAINTS));
    parts.add(ComparisonWords.paints(comparison, kit, firstName, secondName));
    parts.add(List.of(CompareWords.MOVES));
    parts.add(ComparisonWords.moves(comparison, kit, kit.boxOf(lineup)));
    return parts;
  }

  /** Headings and sentences, all in the largest type with which they fit the area. */
  private static List<Mark> text(List<List<String>> parts, Area area) {
    for (double pt = TEXT_PT; pt > TextFit.LEGIBLE_PT; pt -= 0.25) {
      List<Mark> set = set(parts, area, pt);
      if (fits(set, area)) {
        return set;
      }
    }
    return set(parts, area, TextFit.LEGIBLE_PT).stream()
        .filter(mark -> mark.bounds().bottomMm() <= area.bottomMm() + 0.5)
        .toList();
  }

  private static boolean fits(List<Mark> marks, Area area) {
    return marks.stream().allMatch(mark -> mark.bounds().bottomMm() <= area.bottomMm() + 0.5);
  }

  private static List<Mark> set(List<List<String>> parts, Area area, double pt) {
    List<Mark> marks = new ArrayList<>();
    double top = area.yMm();
    for (int part = 0; part < parts.size(); part += 2) {
      FittedText heading =
          TextFit.of(Typeface.BOLD, pt).line(parts.get(part).get(0), area.widthMm());
      marks.addAll(heading.as(Role.SECTION, area.xMm(), top, area.widthMm(), Align.LEFT));
      top += heading.heightMm() + 0.3;
      for (String sentence : parts.get(part + 1)) {
        FittedText text = TextFit.of(Typeface.REGULAR, pt).paragraph(sentence, area.widthMm());
        marks.addAll(text.as(Role.PARAGRAPH, area.xMm(), top, area.widthMm(), Align.LEFT));
        top += text.heightMm() + 0.3;
      }
      top += 1.5;
    }
    return marks;
  }
}
