package org.panwright.print;

import java.util.ArrayList;
import java.util.List;

/**
 * The rule by which texts are made to fit: shrink a little, wrap, shrink to the smallest legible
 * size, break words, cut.
 *
 * <ol>
 *   <li>one line at the wanted size, or shrunk by at most 15 %;
 *   <li>several lines broken between words, at the largest size from the wanted down to the
 *       smallest;
 *   <li>at the smallest size, words broken where the line ends;
 *   <li>what is still too long is cut and ends in an ellipsis.
 * </ol>
 *
 * @param face the face
 * @param wantedPt the size to start with
 * @param smallestPt the size never gone below
 */
public record TextFit(Typeface face, double wantedPt, double smallestPt) {
  /** The smallest size on any paper: below it print is hard to read at arm's length. */
  public static final double LEGIBLE_PT = 5;

  private static final double STEP_PT = 0.25;
  private static final double GENTLE = 0.85;
  private static final String ELLIPSIS = "\u2026";

  public TextFit {
    if (!(smallestPt >= LEGIBLE_PT && wantedPt >= smallestPt)) {
      throw new IllegalArgumentException(
          "type must measure %s pt or more and shrink, was %s to %s"
              .formatted(LEGIBLE_PT, wantedPt, smallestPt));
    }
  }

  /** Fits that start at a size and may shrink down to {@link #LEGIBLE_PT}. */
  public static TextFit of(Typeface face, double wantedPt) {
    return new TextFit(face, Math.max(wantedPt, LEGIBLE_PT), LEGIBLE_PT);
  }

  /** The text in one line; cut if the smallest size is still too long. */
  public FittedText line(String text, double widthMm) {
    String plain = Script.printable(text);
    for (double pt = wantedPt; pt >= smallestPt; pt -= STEP_PT) {
      if (face.widthMm(plain, pt) <= widthMm) {
        return new FittedText(face, pt, List.of(plain), false);
      }
    }
    return new FittedText(face, smallestPt, List.of(shortened(plain, widthMm)), true);
  }

  /**
   * The text within a width and a height. The result is never wider than {@code widthMm}; it is one
   * line at least, even if that is taller than {@code heightMm}.
   */
  public FittedText within(String text, double widthMm, double heightMm) {
    String plain = Script.printable(text);
    for (double pt = wantedPt; pt >= Math.max(smallestPt, wantedPt * GENTLE); pt -= STEP_PT) {
      if (face.widthMm(plain, pt) <= widthMm && rows(pt, heightMm) >= 1) {
        return new FittedText(face, pt, List.of(plain), false);
      }
    }
    for (double pt = wantedPt; pt >= smallestPt; pt -= STEP_PT) {
      List<String> lines = wrapped(plain, widthMm, pt, false);
      if (lines.size() <= rows(pt, heightMm) && widest(lines, pt) <= widthMm) {
        return new FittedText(face, pt, lines, false);
      }
    }
    List<String> lines = wrapped(plain, widthMm, smallestPt, true);
    int rows = Math.max(1, rows(smallestPt, heightMm));
    if (lines.size() <= rows) {
      return new FittedText(face, smallestPt, lines, false);
    }
    List<String> kept = new ArrayList<>(lines.subList(0, rows));
    kept.set(rows - 1, shortened(kept.get(rows - 1), widthMm));
    return new FittedText(face, smallestPt, kept, true);
  }

  /** All of the text at the wanted size, as many lines as it takes. */
  public FittedText paragraph(String text, double widthMm) {
    return new FittedText(
        face, wantedPt, wrapped(Script.printable(text), widthMm, wantedPt, true), false);
  }

  private int rows(double pt, double heightMm) {
    return (int) Math.floor(heightMm / Typeface.leadingMm(pt) + 1e-9);
  }

  private double widest(List<String> lines, double pt) {
    return lines.stream().mapToDouble(line -> face.widthMm(line, pt)).max().orElse(0);
  }

  private List<String> wrapped(String text, double widthMm, double pt, boolean breakWords) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (face.widthMm(longer, pt) <= widthMm) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (breakWords && line.length() > 1 && face.widthMm(line, pt) > widthMm) {
        int end = fitting(line, widthMm, pt);
        lines.add(line.substring(0, end));
        line = line.substring(end);
      }
    }
    lines.add(line);
    return lines;
  }

  /** How many characters of {@code word} fit in a line, at least one. */
  private int fitting(String word, double widthMm, double pt) {
    int end = 1;
    while (end < word.length() && face.widthMm(word.substring(0, end + 1), pt) <= widthMm) {
      end++;
    }
    return end;
  }

  private String shortened(String line, double widthMm) {
    int end = line.length();
    while (end > 0
        && face.widthMm(line.substring(0, end).strip() + ELLIPSIS, smallestPt) > widthMm) {
      end--;
    }
    return line.substring(0, end).strip() + ELLIPSIS;
  }
}
