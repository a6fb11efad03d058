package org.panwright.swatch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.panwright.colour.Lab;
import org.panwright.colour.Spectrum;

/**
 * The columns of a table that hold reflectances or L*, a*, b*, and what a row of them says.
 *
 * <p>A column of a wavelength ends in its nanometres: 380, R380, nm380, SPECTRAL_NM380, SPEC_380
 * and the like. Reflectances are 0..1 or percent: a table whose middle value lies above 1.5 is in
 * percent. One value out of place does not change the unit of the rest; it is refused.
 */
final class ReadingColumns {
  private static final Pattern WAVELENGTH =
      Pattern.compile(
          "(?i)(?:R|NM|SPEC|SPECTRAL|SPECTRAL_NM|SPECTRAL_DEC|SPECTRAL_PCT)?_?(\\d{3,4})(?:\\.0+)?(?:"
              + " ?NM)?");
  private static final double SHORTEST_NM = 200;
  private static final double LONGEST_NM = 2600;
  private static final double PERCENT_FROM = 1.5;
  private static final double LEAST_LIGHTNESS = 0.1;
  private static final double MOST_LIGHTNESS = 99.9;
  private static final double FARTHEST_OPPONENT = 200;

  private final RawTable table;
  private final int[] spectral;
  private final int[] lab;
  private final Resampling resampling;
  private final double unit;
  private final List<Double> wavelengths;

  private ReadingColumns(RawTable table, int[] spectral, int[] lab, double[] wavelengths)
      throws TableFaultException {
    this.table = table;
    this.spectral = spectral;
    this.lab = lab;
    this.wavelengths = Arrays.stream(wavelengths).boxed().toList();
    resampling = spectral.length > 0 ? new Resampling(wavelengths) : null;
    unit = spectral.length > 0 && middle() > PERCENT_FROM ? 0.01 : 1;
  }

  /** Finds the columns of a table; wavelengths win over L*, a*, b* where both are there. */
  static ReadingColumns of(RawTable table) throws TableFaultException {
    List<Integer> places = new ArrayList<>();
    List<Double> wavelengths = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      Matcher matcher = WAVELENGTH.matcher(table.columns().get(i));
      if (matcher.matches()) {
        double nm = Double.parseDouble(matcher.group(1));
        if (nm < SHORTEST_NM || nm > LONGEST_NM) {
          continue;
        }
        if (!wavelengths.isEmpty() && nm <= wavelengths.get(wavelengths.size() - 1)) {
          throw new TableFaultException(new TableFault.BandsOutOfOrder(table.columns().get(i)));
        }
        places.add(i);
        wavelengths.add(nm);
      }
    }
    int[] lab = {only(table, "LAB_L"), only(table, "LAB_A"), only(table, "LAB_B")};
    if (places.size() < 2 && Arrays.stream(lab).anyMatch(place -> place < 0)) {
      throw new TableFaultException(new TableFault.NoReadings());
    }
    if (places.size() < 2) {
      return new ReadingColumns(table, new int[0], lab, new double[0]);
    }
    return new ReadingColumns(
        table,
        places.stream().mapToInt(Integer::intValue).toArray(),
        lab,
        wavelengths.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** The place of a column by name; −1 without one, refused if there are two. */
  private static int only(RawTable table, String name) throws TableFaultException {
    if (table.columns().stream().filter(name::equalsIgnoreCase).count() > 1) {
      throw new TableFaultException(new TableFault.ColumnTwice(name));
    }
    return table.find(name);
  }

  /** Whether the rows hold reflectances. */
  boolean isSpectral() {
    return spectral.length > 0;
  }

  /** The first and the last wavelength in nanometres, and how many; empty without any. */
  List<Double> wavelengths() {
    return wavelengths;
  }

  /** Whether reflectances are in percent. */
  boolean isPercent() {
    return isSpectral() && unit < 1;
  }

  /** The reflectance of a row. */
  Spectrum reflectance(RawTable.Row row) throws TableFaultException {
    double[] readings = new double[spectral.length];
    for (int i = 0; i < spectral.length; i++) {
      double raw = number(row, spectral[i]);
      readings[i] = unit * raw;
      if (!(readings[i] >= 0 && readings[i] <= 1)) {
        throw new TableFaultException(
            new TableFault.OutOfRange(
                row.line(), table.columns().get(spectral[i]), 0, 1 / unit, raw));
      }
    }
    return resampling.spectrum(readings);
  }

  /** The L*, a*, b* of a row, in the light of the file. */
  Lab lab(RawTable.Row row) throws TableFaultException {
    return new Lab(
        within(row, lab[0], LEAST_LIGHTNESS, MOST_LIGHTNESS),
        within(row, lab[1], -FARTHEST_OPPONENT, FARTHEST_OPPONENT),
        within(row, lab[2], -FARTHEST_OPPONENT, FARTHEST_OPPONENT));
  }

  private double within(RawTable.Row row, int place, double low, double high)
      throws TableFaultException {
    double found = number(row, place);
    if (!(found >= low && found <= high)) {
      throw new TableFaultException(
          new TableFault.OutOfRange(row.line(), table.columns().get(place), low, high, found));
    }
    return found;
  }

  /** The finite number in a cell. */
  double number(RawTable.Row row, int place) throws TableFaultException {
    String text = row.cells().get(place);
    String column = table.columns().get(place);
    if (text.isEmpty()) {
      throw new TableFaultException(new TableFault.EmptyCell(row.line(), column));
    }
    double value = parse(text);
    if (!Double.isFinite(value)) {
      throw new TableFaultException(new TableFault.NotANumber(row.line(), column, text));
    }
    return value;
  }

  private double middle() {
    double[] values =
        table.rows().stream()
            .flatMapToDouble(
                row -> Arrays.stream(spectral).mapToDouble(i -> parse(row.cells().get(i))))
            .filter(Double::isFinite)
            .sorted()
            .toArray();
    return values.length == 0 ? 0 : values[values.length / 2];
  }

  private static double parse(String text) {
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException notANumber) {
      return Double.NaN;
    }
  }
}
