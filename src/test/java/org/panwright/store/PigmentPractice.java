package org.panwright.store;

import java.util.List;
import java.util.Optional;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;
import org.panwright.mixing.Film;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Optics;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.Paper;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/** The library painted out: a tube of every pigment on white paper, named as the pigment is. */
final class PigmentPractice {
  static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();

  private static final OpticsTable TABLE = OpticsTable.of(paints(), LIBRARY, Paper.WHITE);
  private static final Mixer MIXER = new Mixer(TABLE);

  private PigmentPractice() {}

  /** One paint alone, dry. */
  static Lab coat(String pigment, double load) {
    return MIXER.lab(Recipe.of(pigment), load);
  }

  /** Two paints in strength parts, dry. */
  static Lab mix(String first, double firstParts, String second, double secondParts, Wash wash) {
    return MIXER.lab(
        Recipe.of(first, firstParts, second, secondParts), WashStrengths.USUAL.load(wash));
  }

  /** The lowest chroma on the way from one paint to the other. */
  static double greyest(String first, String second, Wash wash) {
    double lowest = Double.MAX_VALUE;
    for (double power = -4; power <= 4; power += 0.1) {
      lowest = Math.min(lowest, mix(first, Math.pow(2, power), second, 1, wash).chroma());
    }
    return lowest;
  }

  /** How many strength parts there are in one part by volume. */
  static double strength(String pigment) {
    return 1 / tintLoad(pigment);
  }

  static double tintLoad(String pigment) {
    return TABLE.tintLoad(TABLE.indexOf(pigment));
  }

  static Optics optics(String pigment) {
    return TABLE.optics(TABLE.indexOf(pigment));
  }

  /** Luminous reflectance of the masstone coat over ideal black, without the film's face. */
  static double overBlack(String pigment) {
    return luminous(Film.of(optics(pigment), 1).over(Spectrum.flat(0)));
  }

  /** Luminous reflectance over ideal black against that over the paper (as ASTM D2805). */
  static double contrastRatio(String pigment) {
    return overBlack(pigment) / luminous(Film.of(optics(pigment), 1).over(Paper.WHITE));
  }

  private static double luminous(Spectrum reflectance) {
    return Light.D65.xyz(reflectance).y() / Light.D65.white().y();
  }

  private static List<Paint> paints() {
    return LIBRARY.pigments().stream()
        .map(
            pigment ->
                new Paint(
                    pigment.name().toString(),
                    pigment.commonName(),
                    "",
                    List.of(new PigmentShare(pigment.name(), 1)),
                    pigment.handling(),
                    Ownership.OWNED,
                    Optional.empty(),
                    ""))
        .toList();
  }
}
