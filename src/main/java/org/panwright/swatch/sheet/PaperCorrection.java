package org.panwright.swatch.sheet;

import java.util.List;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.LinearSrgb;

/**
 * Takes light and camera out of a colour by the bare paper at the same place.
 *
 * <pre>c = c(picture) / P(place) · c(paper)   for each of linear red, green, blue</pre>
 *
 * <p>P is the {@link PaperField}; c(paper) is the paper's own colour in linear sRGB. The same
 * division cancels exposure, coloured light (as the camera's channels see it) and uneven light. A
 * lightness no coat can have is held and told ({@link HeldLightness}).
 */
final class PaperCorrection {
  private final PaperField field;
  private final LinearSrgb paper;

  PaperCorrection(PaperField field, Lab paperColour) {
    this.field = field;
    paper = LinearSrgb.ofXyzD65(paperColour.toXyz(Light.D65.white()));
  }

  /** The corrected reading of a spot. */
  PatchReading reading(SpotColour spot) {
    LinearSrgb bare = field.at(spot.middle());
    Lab whole = lab(spot.colour(), bare);
    List<Lab> tiles = spot.tiles().stream().map(tile -> lab(tile, bare)).toList();
    double spread =
        tiles.stream().mapToDouble(tile -> Difference.ciede2000(whole, tile)).average().orElse(0);
    HeldLightness held = HeldLightness.of(whole);
    return new PatchReading(
        held.hold(whole), held, spread, spot.full(), spot.empty(), spot.leftOut(), spot.pixels());
  }

  private Lab lab(LinearSrgb colour, LinearSrgb bare) {
    LinearSrgb corrected =
        new LinearSrgb(
            colour.red() / bare.red() * paper.red(),
            colour.green() / bare.green() * paper.green(),
            colour.blue() / bare.blue() * paper.blue());
    return corrected.toXyzD65().toLab(Light.D65.white());
  }
}
