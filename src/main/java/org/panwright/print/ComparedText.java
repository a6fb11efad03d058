package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import org.panwright.print.FittedText.Align;
import org.panwright.words.CompareWords;

/** The sentences of a comparison: poured into areas, and what finds no room there onto sheets. */
final class ComparedText {
  private static final double TEXT_PT = 7;
  private static final double STEP_PT = 0.25;
  private static final double LINE_GAP_MM = 0.3;
  private static final double PART_GAP_MM = 1.5;
  private static final int COLUMNS = 3;
  private static final double GUTTER_MM = 6;
  private static final double EVENING_MM = 4;

  private final List<Part> beyond = new ArrayList<>();

  /** A heading and its sentences. */
  record Part(String heading, List<String> sentences) {
    Part {
      sentences = List.copyOf(sentences);
    }
  }

  /**
   * Headings and sentences, from area to area, in the largest type in which all find room; where
   * not even the smallest will do, as many as fit and a note that there are more.
   */
  List<Mark> within(List<Part> parts, Area... areas) {
    for (double pt = TEXT_PT; pt >= TextFit.LEGIBLE_PT; pt -= STEP_PT) {
      List<Mark> marks = new ArrayList<>();
      if (pour(parts, List.of(areas), pt, marks).isEmpty()) {
        return marks;
      }
    }
    Area last = areas[areas.length - 1];
    FittedText note =
        TextFit.of(Typeface.REGULAR, TextFit.LEGIBLE_PT)
            .line(CompareWords.CONTINUED, last.widthMm());
    double height = Math.max(0, last.heightMm() - note.heightMm());
    List<Area> shortened = new ArrayList<>(List.of(areas));
    shortened.set(areas.length - 1, new Area(last.xMm(), last.yMm(), last.widthMm(), height));
    List<Mark> marks = new ArrayList<>();
    beyond.addAll(pour(parts, shortened, TextFit.LEGIBLE_PT, marks));
    marks.addAll(
        note.as(Role.PARAGRAPH, last.xMm(), last.yMm() + height, last.widthMm(), Align.LEFT));
    return marks;
  }

  /** What found no room so far, in columns, a list of marks for each sheet. */
  List<List<Mark>> beyond(Area room) {
    List<List<Mark>> sheets = new ArrayList<>();
    double width = (room.widthMm() - (COLUMNS - 1) * GUTTER_MM) / COLUMNS;
    List<Area> columns = new ArrayList<>();
    for (int column = 0; column < COLUMNS; column++) {
      double left = room.xMm() + column * (width + GUTTER_MM);
      columns.add(new Area(left, room.yMm(), width, room.heightMm()));
    }
    List<Part> rest = beyond;
    while (!rest.isEmpty()) {
      List<Mark> marks = new ArrayList<>();
      rest = pour(rest, evened(rest, columns), TEXT_PT, marks);
      sheets.add(marks);
    }
    return sheets;
  }

  /** The columns as high as needed for all parts, so that the last is not left empty. */
  private static List<Area> evened(List<Part> parts, List<Area> columns) {
    double highest = columns.get(0).heightMm();
    for (double height = EVENING_MM; height < highest; height += EVENING_MM) {
      double tried = height;
      List<Area> shorter =
          columns.stream().map(c -> new Area(c.xMm(), c.yMm(), c.widthMm(), tried)).toList();
      if (pour(parts, shorter, TEXT_PT, new ArrayList<>()).isEmpty()) {
        return shorter;
      }
    }
    return columns;
  }

  private static List<Part> pour(List<Part> parts, List<Area> areas, double pt, List<Mark> marks) {
    List<Part> rest = parts;
    for (Area area : areas) {
      rest = pour(rest, area, pt, marks);
    }
    return rest;
  }

  /** Puts as many sentences into an area as fit; returns the others under their headings. */
  private static List<Part> pour(List<Part> parts, Area area, double pt, List<Mark> marks) {
    double top = area.yMm();
    for (int i = 0; i < parts.size(); i++) {
      Part part = parts.get(i);
      FittedText heading = TextFit.of(Typeface.BOLD, pt).line(part.heading(), area.widthMm());
      List<Mark> set = heading.as(Role.SECTION, area.xMm(), top, area.widthMm(), Align.LEFT);
      double next = top + heading.heightMm() + LINE_GAP_MM;
      for (int j = 0; j < part.sentences().size(); j++) {
        FittedText text =
            TextFit.of(Typeface.REGULAR, pt).paragraph(part.sentences().get(j), area.widthMm());
        if (next + text.heightMm() > area.bottomMm()) {
          return rest(parts, i, j);
        }
        if (j == 0) {
          marks.addAll(set);
        }
        marks.addAll(text.as(Role.PARAGRAPH, area.xMm(), next, area.widthMm(), Align.LEFT));
        next += text.heightMm() + LINE_GAP_MM;
      }
      top = next + PART_GAP_MM;
    }
    return List.of();
  }

  private static List<Part> rest(List<Part> parts, int from, int sentence) {
    Part cut = parts.get(from);
    List<Part> rest = new ArrayList<>();
    rest.add(new Part(cut.heading(), cut.sentences().subList(sentence, cut.sentences().size())));
    rest.addAll(parts.subList(from + 1, parts.size()));
    return rest;
  }
}
