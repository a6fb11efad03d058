package org.panwright.colour;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/**
 * A table of a published standard: wavelength in nanometres, then one or more figures.
 *
 * <p>Kept as a text resource beside this class; lines starting with {@code #} name the standard.
 */
final class StandardTable {
  private final double[][] rows;

  private StandardTable(double[][] rows) {
    this.rows = rows;
  }

  static StandardTable observer() {
    return read("observer-cie1931-2deg.csv");
  }

  static StandardTable read(String resource) {
    try (InputStream in = StandardTable.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its table " + resource);
      }
      List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
      return new StandardTable(
          lines.stream()
              .filter(line -> !line.startsWith("#") && Character.isDigit(line.charAt(0)))
              .map(
                  line ->
                      Arrays.stream(line.split(",", -1)).mapToDouble(Double::parseDouble).toArray())
              .toArray(double[][]::new));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  int rows() {
    return rows.length;
  }

  double wavelengthNm(int row) {
    return rows[row][0];
  }

  double value(int row, int column) {
    return rows[row][column + 1];
  }

  /** The first figure of the row at exactly this wavelength. */
  double valueAt(double wavelengthNm) {
    for (double[] row : rows) {
      if (row[0] == wavelengthNm) {
        return row[1];
      }
    }
    throw new IllegalArgumentException("no figure at " + wavelengthNm + " nm");
  }
}
