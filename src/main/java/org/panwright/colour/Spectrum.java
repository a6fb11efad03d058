package org.panwright.colour;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;

/**
 * One finite number for each of the 36 {@link Bands}; what it measures is named by its holder.
 *
 * <p>Immutable: arrays are copied in and out.
 */
public final class Spectrum {
  private final double[] values;

  private Spectrum(double[] values) {
    this.values = values;
  }

  /**
   * A spectrum from 36 values in band order.
   *
   * @throws IllegalArgumentException if there are not 36 values or one is not finite
   */
  public static Spectrum of(double... values) {
    if (values.length != Bands.COUNT) {
      throw new IllegalArgumentException(
          "a spectrum has " + Bands.COUNT + " bands, was " + values.length);
    }
    for (int band = 0; band < values.length; band++) {
      if (!Double.isFinite(values[band])) {
        throw new IllegalArgumentException(
            "a spectrum is finite, was "
                + values[band]
                + " at "
                + Bands.wavelengthNm(band)
                + " nm");
      }
    }
    return new Spectrum(values.clone());
  }

  /** The spectrum with the same value in every band. */
  public static Spectrum flat(double value) {
    return ofBands(band -> value);
  }

  /** The spectrum whose value in each band (0..35) is given by {@code value}. */
  public static Spectrum ofBands(IntToDoubleFunction value) {
    double[] values = new double[Bands.COUNT];
    Arrays.setAll(values, value);
    return of(values);
  }

  /** The spectrum sampled from a function of wavelength in nanometres at each band centre. */
  public static Spectrum ofWavelengths(DoubleUnaryOperator valueAtNm) {
    return ofBands(band -> valueAtNm.applyAsDouble(Bands.wavelengthNm(band)));
  }

  /** The value in a band, 0..35. */
  public double at(int band) {
    return values[band];
  }

  /** The spectrum with {@code operator} applied to each value. */
  public Spectrum map(DoubleUnaryOperator operator) {
    return ofBands(band -> operator.applyAsDouble(values[band]));
  }

  /** The smallest value. */
  public double min() {
    return Arrays.stream(values).min().orElseThrow();
  }

  /** The largest value. */
  public double max() {
    return Arrays.stream(values).max().orElseThrow();
  }

  /**
   * Itself, if every value lies in {@code low..high}.
   *
   * @param what the name of the quantity for the error text, for example "reflectance"
   * @throws IllegalArgumentException naming the first band outside the range
   */
  public Spectrum requireWithin(double low, double high, String what) {
    for (int band = 0; band < values.length; band++) {
      if (!(values[band] >= low && values[band] <= high)) {
        throw new IllegalArgumentException(
            "%s must lie in %s..%s, was %s at %d nm"
                .formatted(what, low, high, values[band], Bands.wavelengthNm(band)));
      }
    }
    return this;
  }

  /** A fresh array of the 36 values. */
  public double[] toArray() {
    return values.clone();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Spectrum that && Arrays.equals(values, that.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    return "Spectrum" + Arrays.toString(values);
  }
}
