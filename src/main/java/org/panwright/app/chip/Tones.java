package org.panwright.app.chip;

import java.util.List;
import org.panwright.colour.GamutFit;
import org.panwright.colour.Oklch;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Wash;

/**
 * How one paint looks alone, dry, on the kit's paper: from masstone to the thinnest wash.
 *
 * @param washes the screen colour of each {@link Wash} in its order
 * @param masstone the colour of the thickest wash
 * @param body the colour of the middle wash, by which painters tell a paint's hue: dark masstones
 *     hide it
 * @param tintLoad the load of one strength part; the smaller, the stronger the paint
 * @param source where the optics come from
 * @param expectedError the CIEDE2000 error to expect
 */
public record Tones(
    List<GamutFit> washes,
    Oklch masstone,
    Oklch body,
    double tintLoad,
    OpticsSource source,
    double expectedError) {
  public Tones {
    washes = List.copyOf(washes);
    if (washes.size() != Wash.values().length) {
      throw new IllegalArgumentException("a tone for each wash, was " + washes.size());
    }
  }

  /** Whether the screen can show every wash as it is. */
  public boolean isExact() {
    return washes.stream().allMatch(GamutFit::exact);
  }
}
