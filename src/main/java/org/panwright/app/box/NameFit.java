package org.panwright.app.box;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A paint's name and codes set into the room under its pan: wrapped, made smaller, long words
 * broken with a hyphen, the codes left out, long words shortened, and only when nothing else helps
 * the name cut with an ellipsis; never beyond the room.
 *
 * @param sizePx font size of the name
 * @param name lines of the name, none if there is no room for one
 * @param codes lines of the codes, none if there is no room
 */
record NameFit(double sizePx, List<String> name, List<String> codes) {
  /**
   * Height of a line for a font size of 1: at the sizes of labels the toolkit rounds the parts
   * above and below the baseline up to whole pixels, so a line is taller than the font says.
   */
  static final double LINE = 1.3;

  /** Font size of the codes for a name of size 1. */
  static final double CODES = 0.9;

  private static final double STEP_PX = 0.5;
  private static final String ELLIPSIS = "…";
  private static final String HYPHEN = "-";
  private static final String SHORTENED = ".";
  private static final String VOWELS = "aeiouy";

  /** Letters to stand together at least before a hyphen, or of a shortened word. */
  private static final int LEAST_START = 3;

  /** Letters to stand together at least behind a hyphen. */
  private static final int LEAST_END = 2;

  /** Of a word shortened, one letter in this many stays at least. */
  private static final int LEAST_SHARE = 3;

  private static final Pattern SPACES = Pattern.compile("\\s+");

  NameFit {
    name = List.copyOf(name);
    codes = List.copyOf(codes);
  }

  /**
   * Sets a name and codes.
   *
   * @param width of the room in pixels
   * @param height of the room in pixels
   * @param largestPx the font size if there is room enough
   * @param smallestPx the smallest that can still be read
   * @param width1 the width of a text at font size 1
   */
  static NameFit of(
      String name,
      String codes,
      double width,
      double height,
      double largestPx,
      double smallestPx,
      ToDoubleFunction<String> width1) {
    Setter setter = new Setter(width, width1);
    for (double size = largestPx; size > smallestPx; size -= STEP_PX) {
      NameFit fit = setter.whole(name, codes, size);
      if (fit != null && fit.heightPx() <= height) {
        return fit;
      }
    }
    return Stream.<Supplier<List<String>>>of(
            () -> setter.wrapBroken(name, smallestPx), () -> setter.wrapShortened(name, smallestPx))
        .map(Supplier::get)
        .flatMap(
            lines ->
                Stream.of(
                    setter.withOneLineOfCodes(lines, codes, smallestPx),
                    setter.nameOnly(lines, smallestPx)))
        .filter(fit -> fit.heightPx() <= height)
        .filter(fit -> fit.name().stream().allMatch(line -> setter.fits(line, smallestPx)))
        .findFirst()
        .orElseGet(() -> setter.smallest(name, codes, smallestPx, height));
  }

  /** The height of all lines. */
  double heightPx() {
    return LINE * sizePx * (name.size() + CODES * codes.size());
  }

  /** Sets lines into one width. */
  private record Setter(double width, ToDoubleFunction<String> width1) {
    /** Everything whole, or null if a word is too wide. */
    NameFit whole(String name, String codes, double size) {
      List<String> nameLines = wrap(name, size);
      List<String> codeLines = wrap(codes, size * CODES);
      boolean fits =
          nameLines.stream().allMatch(line -> fits(line, size))
              && codeLines.stream().allMatch(line -> fits(line, size * CODES));
      return fits ? new NameFit(size, nameLines, codeLines) : null;
    }

    /** A name, and of the codes what one line holds. */
    NameFit withOneLineOfCodes(List<String> nameLines, String codes, double size) {
      return new NameFit(size, nameLines, cut(wrap(codes, size * CODES), 1, size * CODES));
    }

    /** A name alone: two paints of one pigment differ by it. */
    NameFit nameOnly(List<String> nameLines, double size) {
      return new NameFit(size, nameLines, List.of());
    }

    /**
     * As much as the height takes; the codes, being short, go before the end of a long name. What
     * could be of any paint, such as “P…”, is left out: the colour says more.
     */
    NameFit smallest(String name, String codes, double size, double height) {
      String first = SPACES.split(codes.strip(), 2)[0];
      List<String> codeLines =
          fits(first, size * CODES) && LINE * CODES * size <= height
              ? cut(wrap(codes, size * CODES), 1, size * CODES)
              : List.of();
      double codesHeight = codeLines.size() * LINE * CODES * size;
      int room = (int) ((height - codesHeight) / (LINE * size));
      List<String> nameLines = cut(wrap(name, size), room, size);
      boolean tells = nameLines.stream().allMatch(line -> line.length() > LEAST_START);
      return new NameFit(size, tells ? nameLines : List.of(), codeLines);
    }

    /** The name with words broken that no line holds; what is left of one takes the next along. */
    List<String> wrapBroken(String name, double size) {
      List<String> lines = new ArrayList<>();
      String line = "";
      for (String word : SPACES.split(name.strip(), -1)) {
        if (line.isEmpty() || !fits(line + " " + word, size)) {
          if (!line.isEmpty()) {
            lines.add(line);
          }
          line = word;
          for (int at = bestBreak(line, size); !fits(line, size) && at > 0; ) {
            lines.add(line.substring(0, at) + HYPHEN);
            line = line.substring(at);
            at = bestBreak(line, size);
          }
        } else {
          line = line + " " + word;
        }
      }
      lines.add(line);
      return lines;
    }

    /** The name with the words shortened that no line holds: “Quinacr. rose”. */
    List<String> wrapShortened(String name, double size) {
      return wrap(
          SPACES
              .splitAsStream(name.strip())
              .map(word -> fits(word, size) ? word : shortened(word, size))
              .collect(Collectors.joining(" ")),
          size);
    }

    private String shortened(String word, double size) {
      int least = Math.max(LEAST_START, word.length() / LEAST_SHARE);
      for (int kept = word.length() - 2; kept >= least; kept--) {
        String start = word.substring(0, kept);
        if (start.chars().allMatch(c -> isPlainLetter((char) c)) && fits(start + SHORTENED, size)) {
          return start + SHORTENED;
        }
      }
      return word;
    }

    /**
     * The last place between syllables, better with three letters behind it than with two, at which
     * a word can be broken so that its beginning fits; else the last of all, or 0. A syllable is
     * taken to begin with a consonant before a vowel.
     */
    private int bestBreak(String word, double size) {
      int last = 0;
      int lastSyllable = 0;
      for (int at = word.length() - LEAST_END; at >= LEAST_START; at--) {
        if (isBreakable(word, at) && fits(word.substring(0, at) + HYPHEN, size)) {
          last = Math.max(last, at);
          if (isSyllable(word, at)) {
            lastSyllable = Math.max(lastSyllable, at);
            if (at < word.length() - LEAST_END) {
              return at;
            }
          }
        }
      }
      return lastSyllable > 0 ? lastSyllable : last;
    }

    /** An h belongs to the consonant before it, as in “phthalo”. */
    private static boolean isSyllable(String word, int at) {
      char first = Character.toLowerCase(word.charAt(at));
      boolean begins = first != 'h' && VOWELS.indexOf(first) < 0;
      return begins && VOWELS.indexOf(Character.toLowerCase(word.charAt(at + 1))) >= 0;
    }

    /** Only between letters of scripts that are written from left to right and take a hyphen. */
    private static boolean isBreakable(String word, int at) {
      return isPlainLetter(word.charAt(at - 1)) && isPlainLetter(word.charAt(at));
    }

    private static boolean isPlainLetter(char letter) {
      return Character.isLetter(letter)
          && Character.getDirectionality(letter) == Character.DIRECTIONALITY_LEFT_TO_RIGHT;
    }

    private List<String> wrap(String text, double size) {
      List<String> lines = new ArrayList<>();
      String line = "";
      for (String word : SPACES.split(text.strip(), -1)) {
        String longer = line.isEmpty() ? word : line + " " + word;
        if (line.isEmpty() || fits(longer, size)) {
          line = longer;
        } else {
          lines.add(line);
          line = word;
        }
      }
      lines.add(line);
      return lines;
    }

    private List<String> cut(List<String> lines, int room, double size) {
      List<String> kept = new ArrayList<>();
      for (int i = 0; i < Math.min(room, lines.size()); i++) {
        boolean isLast = i == room - 1 && lines.size() > room;
        String line = cut(isLast ? lines.get(i) + ELLIPSIS : lines.get(i), size);
        if (!line.isEmpty()) {
          kept.add(line);
        }
      }
      return kept;
    }

    private String cut(String line, double size) {
      if (fits(line, size)) {
        return line;
      }
      int length = line.codePointCount(0, line.length());
      for (int kept = length - 1; kept > 0; kept--) {
        String shorter = line.substring(0, line.offsetByCodePoints(0, kept)) + ELLIPSIS;
        if (fits(shorter, size)) {
          return shorter;
        }
      }
      return "";
    }

    private boolean fits(String line, double size) {
      return width1.applyAsDouble(line) * size <= width;
    }
  }
}
