package org.panwright.swatch.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/**
 * Numbers as rows of black and white squares: the number, then its {@link Crc8}, each second square
 * turned round so that no number is all white or all black.
 */
final class CodeBits {
  static final int CHECK = 8;

  private CodeBits() {}

  /** The squares of a number of {@code count} bits; true is black. */
  static List<Boolean> squares(long number, int count) {
    long whole = (number << CHECK) | Crc8.of(number, count);
    List<Boolean> squares = new ArrayList<>();
    for (int i = count + CHECK - 1; i >= 0; i--) {
      squares.add(((whole >>> i) & 1) != (i & 1));
    }
    return squares;
  }

  /** The number of squares that were read; empty if the check does not hold. */
  static OptionalLong number(List<Boolean> squares) {
    long whole = 0;
    int count = squares.size() - CHECK;
    for (int k = 0; k < squares.size(); k++) {
      int i = squares.size() - 1 - k;
      int bit = (squares.get(k) ? 1 : 0) ^ (i & 1);
      whole = (whole << 1) | bit;
    }
    long number = whole >>> CHECK;
    return Crc8.of(number, count) == (whole & 0xff)
        ? OptionalLong.of(number)
        : OptionalLong.empty();
  }
}
