package org.panwright.print;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.panwright.colour.Srgb;

/**
 * One thing placed on a sheet, in millimetres from the sheet's upper left corner. Marks are drawn
 * in their order.
 */
public sealed interface Mark {
  /** The area the mark may blacken. */
  Area bounds();

  /** The mark itself, or for a group the marks in it and in its groups. */
  default Stream<Mark> single() {
    return Stream.of(this);
  }

  /**
   * One line of text.
   *
   * @param sizePt size of the type in points of 1/72 inch
   * @param xMm where the line starts
   * @param baselineMm the height of the line the letters stand on
   * @param upwards whether the line runs upwards, turned a quarter to the left, from that point
   * @param text in reading order; only characters of the face, see {@link Script#printable}
   */
  record Text(
      Typeface face,
      double sizePt,
      double xMm,
      double baselineMm,
      boolean upwards,
      Srgb ink,
      String text)
      implements Mark {
    public Text {
      Objects.requireNonNull(face, "face");
      Objects.requireNonNull(ink, "ink");
      if (!(sizePt > 0 && sizePt <= 200)) {
        throw new IllegalArgumentException("type must measure 0..200 pt, was " + sizePt);
      }
      text.codePoints()
          .filter(point -> !face.has(point))
          .findFirst()
          .ifPresent(
              point -> {
                throw new IllegalArgumentException(
                    "the face has no glyph for U+%04X".formatted(point));
              });
    }

    /** The length of the line in millimetres. */
    public double lengthMm() {
      return face.widthMm(text, sizePt);
    }

    @Override
    public Area bounds() {
      double up = face.ascentMm(sizePt);
      double tall = up + face.descentMm(sizePt);
      return upwards
          ? new Area(xMm - up, baselineMm - lengthMm(), tall, lengthMm())
          : new Area(xMm, baselineMm - up, lengthMm(), tall);
    }
  }

  /**
   * A straight line, solid or dashed.
   *
   * @param strokeMm thickness
   */
  record Line(
      double fromXMm,
      double fromYMm,
      double toXMm,
      double toYMm,
      double strokeMm,
      Srgb ink,
      boolean dashed)
      implements Mark {
    public Line {
      Objects.requireNonNull(ink, "ink");
      requireStroke(strokeMm);
    }

    @Override
    public Area bounds() {
      return new Area(
          Math.min(fromXMm, toXMm),
          Math.min(fromYMm, toYMm),
          Math.abs(toXMm - fromXMm),
          Math.abs(toYMm - fromYMm));
    }
  }

  /**
   * The outline of an area.
   *
   * @param radiusMm of the round corners, 0 for square ones
   * @param strokeMm thickness, centred on the edge
   * @param fill what the inside is painted with, if anything
   */
  record Rectangle(
      Area area, double radiusMm, double strokeMm, Srgb ink, boolean dashed, Optional<Srgb> fill)
      implements Mark {
    public Rectangle {
      Objects.requireNonNull(area, "area");
      Objects.requireNonNull(ink, "ink");
      Objects.requireNonNull(fill, "fill");
      requireStroke(strokeMm);
      if (!(radiusMm >= 0)) {
        throw new IllegalArgumentException("radius must not be negative, was " + radiusMm);
      }
    }

    @Override
    public Area bounds() {
      return area;
    }
  }

  /**
   * A field of colour running from left to right.
   *
   * @param run at least one colour, evenly spaced from the left edge to the right; a single one
   *     fills the field
   */
  record Swatch(Area area, List<Srgb> run) implements Mark {
    public Swatch {
      Objects.requireNonNull(area, "area");
      run = List.copyOf(run);
      if (run.isEmpty()) {
        throw new IllegalArgumentException("a swatch needs a colour");
      }
    }

    @Override
    public Area bounds() {
      return area;
    }
  }

  /**
   * Marks that mean one thing together, in reading order. Marks outside of any group are read as
   * paragraphs if they are texts and are decoration if not.
   *
   * @param words what a {@link Role#FIGURE} shows, not blank; empty for all others
   * @param marks at least one
   */
  record Group(Role role, String words, List<Mark> marks) implements Mark {
    public Group {
      Objects.requireNonNull(role, "role");
      marks = List.copyOf(marks);
      if (marks.isEmpty()) {
        throw new IllegalArgumentException("a group needs a mark");
      }
      if ((role == Role.FIGURE) == words.isBlank()) {
        throw new IllegalArgumentException(
            "a figure, and nothing else, needs words; %s had \"%s\"".formatted(role, words));
      }
    }

    /** A group without words of its own; nothing if there are no marks. */
    public static List<Mark> of(Role role, List<Mark> marks) {
      return marks.isEmpty() ? List.of() : List.of(new Group(role, "", marks));
    }

    @Override
    public Area bounds() {
      double left = Double.POSITIVE_INFINITY;
      double top = Double.POSITIVE_INFINITY;
      double right = Double.NEGATIVE_INFINITY;
      double bottom = Double.NEGATIVE_INFINITY;
      for (Mark mark : marks) {
        Area area = mark.bounds();
        left = Math.min(left, area.xMm());
        top = Math.min(top, area.yMm());
        right = Math.max(right, area.rightMm());
        bottom = Math.max(bottom, area.bottomMm());
      }
      return new Area(left, top, right - left, bottom - top);
    }

    @Override
    public Stream<Mark> single() {
      return marks.stream().flatMap(Mark::single);
    }
  }

  private static void requireStroke(double mm) {
    if (!(mm > 0 && mm <= 10)) {
      throw new IllegalArgumentException("a stroke measures 0..10 mm, was " + mm);
    }
  }
}
