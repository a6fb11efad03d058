package org.panwright.swatch.file;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which columns of a table of readings hold what, and in which unit.
 *
 * <p>Reflectances count where both their ends are given, else L*, a*, b*, else X, Y, Z.
 *
 * @param places the number from 0 of the table's column; what has none is not read
 * @param firstNm the wavelength of {@link ReadingField#FIRST} where the heads name none
 * @param lastNm the wavelength of {@link ReadingField#LAST} where the heads name none; those
 *     between follow in even steps
 * @param scale of the reflectances, or of X, Y, Z
 * @param light under which L*, a*, b* or X, Y, Z were worked out
 */
public record ReadingMapping(
    Map<ReadingField, Integer> places,
    double firstNm,
    double lastNm,
    Scale scale,
    ReadingLight light) {
  /** How reflectances, or Y of the perfect white, are written. */
  public enum Scale {
    /** 0 to 1. */
    SHARE,
    /** 0 to 100. */
    PERCENT
  }

  /** The light of L*, a*, b* or X, Y, Z; 2° observer. */
  public enum ReadingLight {
    /** The graphic trade's. */
    D50,
    /** The screen's, and this program's. */
    D65
  }

  /** L*, a*, b*. */
  static final List<ReadingField> LAB =
      List.of(ReadingField.LIGHTNESS, ReadingField.A, ReadingField.B);

  /** X, Y, Z. */
  static final List<ReadingField> XYZ = List.of(ReadingField.X, ReadingField.Y, ReadingField.Z);

  public ReadingMapping {
    places = Map.copyOf(places);
  }

  /** The mapping with something read from another column, or not at all. */
  public ReadingMapping with(ReadingField field, Optional<Integer> place) {
    Map<ReadingField, Integer> changed = new EnumMap<>(ReadingField.class);
    changed.putAll(places);
    place.ifPresentOrElse(at -> changed.put(field, at), () -> changed.remove(field));
    return new ReadingMapping(changed, firstNm, lastNm, scale, light);
  }

  /** The mapping with other wavelengths for heads that name none. */
  public ReadingMapping withWavelengths(double first, double last) {
    return new ReadingMapping(places, first, last, scale, light);
  }

  /** The mapping with reflectances of another scale. */
  public ReadingMapping with(Scale other) {
    return new ReadingMapping(places, firstNm, lastNm, other, light);
  }

  /** The mapping with L*, a*, b* or X, Y, Z under another light. */
  public ReadingMapping with(ReadingLight other) {
    return new ReadingMapping(places, firstNm, lastNm, scale, other);
  }

  /** Where something is read from. */
  public Optional<Integer> place(ReadingField field) {
    return Optional.ofNullable(places.get(field));
  }

  /** Whether reflectances are read. */
  public boolean isSpectral() {
    return places.containsKey(ReadingField.FIRST) && places.containsKey(ReadingField.LAST);
  }

  /** Whether a spectrum or a colour is read. */
  public boolean isComplete() {
    return isSpectral() || isLab() || isXyz();
  }

  /** Whether L*, a*, b* are read where no reflectances are. */
  public boolean isLab() {
    return places.keySet().containsAll(LAB);
  }

  /** Whether X, Y, Z are read where neither reflectances nor L*, a*, b* are. */
  public boolean isXyz() {
    return places.keySet().containsAll(XYZ);
  }
}
