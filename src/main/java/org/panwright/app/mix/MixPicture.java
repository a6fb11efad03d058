package org.panwright.app.mix;

import java.util.List;
import org.panwright.colour.Lab;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Ratio;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Wash;

/**
 * One mix as it is to be shown. Immutable.
 *
 * @param first the paint of the row
 * @param second the paint of the column; the same as {@code first} for a paint alone
 * @param ratio place in {@link Ratio#GRID}
 * @param wash the wash shown large
 * @param dry the colour dry
 * @param wet the colour wet
 * @param ratios the dry colour in every ratio at this wash; one colour for a paint alone
 * @param washes the dry colour in every wash at this ratio
 * @param firstVolume the first paint's share by volume, 1 for a paint alone
 * @param reflectance the dry coat's reflectance, 0..1
 * @param expectedError CIEDE2000 to expect
 * @param sources where the optics of the paints come from
 */
record MixPicture(
    String first,
    String second,
    int ratio,
    Wash wash,
    Lab dry,
    Lab wet,
    List<Lab> ratios,
    List<Lab> washes,
    double firstVolume,
    Spectrum reflectance,
    double expectedError,
    List<OpticsSource> sources) {
  MixPicture {
    ratios = List.copyOf(ratios);
    washes = List.copyOf(washes);
    sources = List.copyOf(sources);
  }

  boolean alone() {
    return ratios.size() == 1;
  }
}
