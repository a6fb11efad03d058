package org.panwright.swatch.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.panwright.colour.Adaptation;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;
import org.panwright.colour.Xyz;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.file.ReadingMapping.ReadingLight;
import org.panwright.swatch.file.ReadingMapping.Scale;
import org.panwright.swatch.table.DelimitedText;
import org.panwright.swatch.table.RawTable;
import org.panwright.swatch.table.TableFault;
import org.panwright.swatch.table.TableFaultException;

/** What the rows of a table say under a {@link ReadingMapping}. */
final class ReadingColumns {
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(?:\\d+[.,]?\\d*|[.,]\\d+)(?:[eE][-+]?\\d+)?");
  private static final char MINUS_SIGN = '\u2212';
  private static final double LEAST_LIGHTNESS = 0.1;
  private static final double MOST_LIGHTNESS = 99.9;
  private static final double FARTHEST_OPPONENT = 200;
  private static final double BRIGHTENED = 1.2;

  private final RawTable table;
  private final int[] spectral;
  private final int[] colour;
  private final boolean xyz;
  private final Optional<Integer> amount;
  private final List<Double> wavelengths;
  private final Resampling resampling;
  private final double unit;
  private final ReadingLight light;

  private ReadingColumns(
      RawTable table, int[] spectral, double[] wavelengths, int[] colour, ReadingMapping mapping)
      throws TableFaultException {
    this.table = table;
    this.spectral = spectral;
    this.colour = colour;
    xyz = !mapping.isLab();
    amount = mapping.place(ReadingField.AMOUNT);
    this.wavelengths = Arrays.stream(wavelengths).boxed().toList();
    resampling = spectral.length > 0 ? new Resampling(wavelengths) : null;
    unit = mapping.scale() == Scale.PERCENT ? 0.01 : 1;
    light = mapping.light();
  }

  /**
   * The columns of a table under a mapping.
   *
   * @throws TableFaultException if they cannot be a spectrum or a colour
   */
  static ReadingColumns of(RawTable table, ReadingMapping mapping) throws TableFaultException {
    if (mapping.isSpectral()) {
      return spectral(table, mapping);
    }
    if (!mapping.isComplete()) {
      throw new TableFaultException(new TableFault.NoReadings());
    }
    int[] colour =
        (mapping.isLab() ? ReadingMapping.LAB : ReadingMapping.XYZ)
            .stream().mapToInt(field -> mapping.place(field).orElseThrow()).toArray();
    return new ReadingColumns(table, new int[0], new double[0], colour, mapping);
  }

  /** The columns of the spectrum whose heads name wavelengths; none if they do not. */
  static int[] named(RawTable table, ReadingMapping mapping) {
    int one = mapping.place(ReadingField.FIRST).orElseThrow();
    int other = mapping.place(ReadingField.LAST).orElseThrow();
    return ReadingHeads.spectral(table.columns(), Math.min(one, other), Math.max(one, other));
  }

  /** Wavelengths that fall from column to column are turned round. */
  private static ReadingColumns spectral(RawTable table, ReadingMapping mapping)
      throws TableFaultException {
    int one = mapping.place(ReadingField.FIRST).orElseThrow();
    int other = mapping.place(ReadingField.LAST).orElseThrow();
    List<Integer> places = new ArrayList<>();
    List<Double> nm = new ArrayList<>();
    for (int place : named(table, mapping)) {
      places.add(place);
      nm.add(ReadingHeads.wavelength(table.columns().get(place)).orElseThrow());
    }
    if (places.isEmpty()) {
      IntStream.rangeClosed(Math.min(one, other), Math.max(one, other)).forEach(places::add);
      double step = one == other ? 0 : (mapping.lastNm() - mapping.firstNm()) / (other - one);
      places.forEach(place -> nm.add(mapping.firstNm() + step * (place - one)));
    }
    if (nm.size() > 1 && nm.get(1) < nm.get(0)) {
      Collections.reverse(places);
      Collections.reverse(nm);
    }
    for (int i = 1; i < nm.size(); i++) {
      if (nm.get(i) <= nm.get(i - 1)) {
        throw new TableFaultException(
            new TableFault.BandsOutOfOrder(table.columns().get(places.get(i))));
      }
    }
    return new ReadingColumns(
        table,
        places.stream().mapToInt(Integer::intValue).toArray(),
        nm.stream().mapToDouble(Double::doubleValue).toArray(),
        new int[3],
        mapping);
  }

  /** The wavelengths read in nanometres, rising; empty if a colour is read. */
  List<Double> wavelengths() {
    return wavelengths;
  }

  /** What a row says. */
  Reading reading(DelimitedText.Row row) throws TableFaultException {
    return spectral.length > 0
        ? new Reading.OfSpectrum(reflectance(row))
        : new Reading.OfColour(xyz ? ofXyz(row) : ofLab(row));
  }

  /** How much paint it says lies there, 0 or more; empty if it does not say. */
  OptionalDouble amount(DelimitedText.Row row) throws TableFaultException {
    if (amount.isEmpty() || row.cells().get(amount.get()).isEmpty()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(within(row, amount.get(), 0, Double.MAX_VALUE));
  }

  private Spectrum reflectance(DelimitedText.Row row) throws TableFaultException {
    double[] readings = new double[spectral.length];
    for (int i = 0; i < spectral.length; i++) {
      double raw = number(row, spectral[i]);
      readings[i] = unit * raw;
      if (!(readings[i] >= 0 && readings[i] <= 1)) {
        throw new TableFaultException(outOfRange(row, spectral[i], 0, 1 / unit, raw));
      }
    }
    return resampling.spectrum(readings);
  }

  /** Under D65; from D50 by linear Bradford adaptation. */
  private Lab ofLab(DelimitedText.Row row) throws TableFaultException {
    Lab said =
        new Lab(
            within(row, colour[0], LEAST_LIGHTNESS, MOST_LIGHTNESS),
            within(row, colour[1], -FARTHEST_OPPONENT, FARTHEST_OPPONENT),
            within(row, colour[2], -FARTHEST_OPPONENT, FARTHEST_OPPONENT));
    return light == ReadingLight.D65 ? said : underD65(said.toXyz(Light.D50.white()));
  }

  /**
   * The same from X, Y, Z. Y is bound as L* is; X and Z may be somewhat above those of the perfect
   * white, as those of paper with a brightener are.
   */
  private Lab ofXyz(DelimitedText.Row row) throws TableFaultException {
    Xyz white = (light == ReadingLight.D65 ? Light.D65 : Light.D50).white();
    Xyz least = new Lab(LEAST_LIGHTNESS, 0, 0).toXyz(white);
    Xyz most = new Lab(MOST_LIGHTNESS, 0, 0).toXyz(white);
    Xyz said =
        new Xyz(
                within(row, colour[0], 0, BRIGHTENED * white.x() / unit),
                within(row, colour[1], least.y() / unit, most.y() / unit),
                within(row, colour[2], 0, BRIGHTENED * white.z() / unit))
            .times(unit);
    return light == ReadingLight.D65 ? Lab.of(said, white) : underD65(said);
  }

  private static Lab underD65(Xyz underD50) {
    Xyz white = Light.D65.white();
    return Lab.of(Adaptation.adapt(underD50, Light.D50.white(), white), white);
  }

  private double within(DelimitedText.Row row, int place, double low, double high)
      throws TableFaultException {
    double found = number(row, place);
    if (!(found >= low && found <= high)) {
      throw new TableFaultException(outOfRange(row, place, low, high, found));
    }
    return found;
  }

  private TableFault outOfRange(
      DelimitedText.Row row, int place, double low, double high, double found) {
    return new TableFault.OutOfRange(
        table.line(row, place), table.column(row, place), low, high, found);
  }

  /** The name of a column. */
  String head(int place) {
    return table.columns().get(place);
  }

  /** The finite number in a cell. */
  double number(DelimitedText.Row row, int place) throws TableFaultException {
    String text = row.cells().get(place);
    int line = table.line(row, place);
    String column = table.column(row, place);
    if (text.isEmpty()) {
      throw new TableFaultException(new TableFault.EmptyCell(line, column));
    }
    double value = parse(text);
    if (!Double.isFinite(value)) {
      throw new TableFaultException(new TableFault.NotANumber(line, column, text));
    }
    return value;
  }

  /** The number a text stands for, a decimal comma being a point; NaN if it is none. */
  static double parse(String text) {
    String plain = text.replace(MINUS_SIGN, '-');
    return NUMBER.matcher(plain).matches()
        ? Double.parseDouble(plain.replace(',', '.'))
        : Double.NaN;
  }
}
