package org.panwright.swatch.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * What the squares at a sheet's head say: which sheet, which of its pages, which paper.
 *
 * @param format of the paper
 * @param page from 1
 * @param pages how many the sheet has, up to 1023
 * @param sheet a number made from the paints of all pages, 0..65535
 */
public record PageCode(SheetFormat format, int page, int pages, int sheet) {
  /** Squares in a page's code. */
  public static final int BITS = 48;

  /** The most pages a sheet may have. */
  public static final int MOST_PAGES = 1023;

  private static final int LAYOUT = 1;
  private static final int NUMBER = BITS - CodeBits.CHECK;

  public PageCode {
    if (!(page >= 1 && page <= pages && pages <= MOST_PAGES && sheet >= 0 && sheet <= 0xffff)) {
      throw new IllegalArgumentException(
          "page %d of %d of sheet %d is out of range".formatted(page, pages, sheet));
    }
  }

  /** The number of a sheet of these paints in this order. */
  public static int sheetOf(List<String> paintIds) {
    return (int) (PaintMark.of(String.join("\n", paintIds)).number() & 0xffff);
  }

  /** The squares; true is black. */
  public List<Boolean> squares() {
    long number = LAYOUT & 0x3;
    number = (number << 2) | format.ordinal();
    number = (number << 10) | page;
    number = (number << 10) | pages;
    number = (number << 16) | sheet;
    return CodeBits.squares(number, NUMBER);
  }

  /** What squares say; empty if they are no code of a page. */
  public static Optional<PageCode> of(List<Boolean> squares) {
    OptionalLong read = CodeBits.number(squares);
    if (read.isEmpty()) {
      return Optional.empty();
    }
    long number = read.getAsLong();
    int sheet = (int) (number & 0xffff);
    int pages = (int) (number >>> 16) & 0x3ff;
    int page = (int) (number >>> 26) & 0x3ff;
    int format = (int) (number >>> 36) & 0x3;
    int layout = (int) (number >>> 38) & 0x3;
    boolean sound =
        layout == LAYOUT && page >= 1 && page <= pages && format < SheetFormat.values().length;
    return sound
        ? Optional.of(new PageCode(SheetFormat.values()[format], page, pages, sheet))
        : Optional.empty();
  }
}
