package org.panwright.analysis.finding;

import org.panwright.mixing.Mixer;
import org.panwright.mixing.Recipe;
import org.panwright.paint.OpticsSource;

/**
 * How far a predicted difference between two colours can be trusted.
 *
 * @param error the greater of the two CIEDE2000 errors to expect of the colours themselves
 * @param estimates how many of the two rest on an estimate from pigment names, 0..2
 */
public record Doubt(double error, int estimates) {
  /** The doubt about the difference between two recipes of a table. */
  public static Doubt between(Mixer mixer, Recipe first, Recipe second) {
    return new Doubt(
        Math.max(mixer.expectedError(first), mixer.expectedError(second)),
        (isEstimate(mixer, first) ? 1 : 0) + (isEstimate(mixer, second) ? 1 : 0));
  }

  /** Whether the colours are known less well than they differ. */
  public boolean swallows(double difference) {
    return error > difference;
  }

  private static boolean isEstimate(Mixer mixer, Recipe recipe) {
    return recipe.portions().stream()
        .map(portion -> mixer.table().optics(mixer.table().indexOf(portion.paintId())))
        .anyMatch(optics -> optics.source() == OpticsSource.PIGMENTS);
  }
}
