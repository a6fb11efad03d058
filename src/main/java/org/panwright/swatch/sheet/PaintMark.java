package org.panwright.swatch.sheet;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.zip.CRC32;

/**
 * The number by which a sheet names a paint, made from the paint's id in its kit, so that a sheet
 * read years later, or from another page, still finds its paints.
 *
 * @param number 0..2³² − 1, the CRC-32 of the id (ISO/IEC 8802-3)
 */
public record PaintMark(long number) {
  /** Squares in a paint's code. */
  public static final int BITS = 40;

  private static final int NUMBER = BITS - CodeBits.CHECK;

  public PaintMark {
    if (number < 0 || number > 0xffffffffL) {
      throw new IllegalArgumentException("a mark has 32 bits, was " + number);
    }
  }

  /** The mark of a paint. */
  public static PaintMark of(String paintId) {
    CRC32 crc = new CRC32();
    crc.update(paintId.getBytes(StandardCharsets.UTF_8));
    return new PaintMark(crc.getValue());
  }

  /** The squares; true is black. */
  public List<Boolean> squares() {
    return CodeBits.squares(number, NUMBER);
  }

  /** What squares say; empty if they are no code of a paint. */
  static Optional<PaintMark> of(List<Boolean> squares) {
    OptionalLong read = CodeBits.number(squares);
    return read.isPresent() ? Optional.of(new PaintMark(read.getAsLong())) : Optional.empty();
  }
}
