package org.panwright.swatch.kept;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.panwright.swatch.coat.Swatch;
import org.panwright.swatch.fit.FitRefusedException;
import org.panwright.swatch.fit.FitReport;
import org.panwright.swatch.fit.FitSettings;
import org.panwright.swatch.fit.GroupedFit;
import org.panwright.swatch.fit.KnownFace;
import org.panwright.swatch.fit.SwatchResidual;

/**
 * A fit of kept coats behind a face that throws back no more than the darkest reading of any.
 *
 * <p>The face is chosen for the loads that are presumed, and again for those that are found. A coat
 * that is darker even so is left out.
 *
 * @param kept the coats that were fitted
 * @param face behind which
 * @param report what came out
 */
record FacedFit(KeptCoats kept, KnownFace face, FitReport report) {
  private static final int ROUNDS = 3;

  /**
   * Fits the coats.
   *
   * @param sought the paints whose optics are looked for
   * @throws FitRefusedException if nothing can be learnt from the coats
   */
  static FacedFit of(KeptCoats kept, Set<String> sought, BooleanSupplier outdated)
      throws FitRefusedException {
    FacedFit fit =
        behind(KnownFace.of(kept.set().swatches(), sought, kept.measured()), kept, outdated);
    for (int round = 0; round < ROUNDS && !fit.above().isEmpty(); round++) {
      fit = behind(KnownFace.of(fit.laid(), sought, kept.measured()), kept, outdated);
    }
    Set<Swatch> above = fit.above();
    return above.isEmpty() ? fit : behind(fit.face(), kept.without(above::contains), outdated);
  }

  private static FacedFit behind(KnownFace face, KeptCoats kept, BooleanSupplier outdated)
      throws FitRefusedException {
    FitSettings settings = FitSettings.FOR_ENGINE.on(face);
    return new FacedFit(kept, face, GroupedFit.of(kept.set(), settings, kept.pigments(), outdated));
  }

  /** What the fit minded. */
  FitSettings settings() {
    return FitSettings.FOR_ENGINE.on(face);
  }

  /** The swatches whose face, at the load that was found, throws back more than was read. */
  private Set<Swatch> above() {
    Set<Swatch> above = new HashSet<>();
    for (SwatchResidual residual : report.residuals()) {
      if (!face.allows(residual.swatch().loaded(residual.loadFactor()))) {
        above.add(residual.swatch());
      }
    }
    return above;
  }

  /** The swatches at the loads that were found. */
  private List<Swatch> laid() {
    return report.residuals().stream().map(r -> r.swatch().loaded(r.loadFactor())).toList();
  }
}
