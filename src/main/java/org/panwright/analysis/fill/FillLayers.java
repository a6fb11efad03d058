package org.panwright.analysis.fill;

import java.util.ArrayList;
import java.util.List;
import org.panwright.kit.FillPractice;

/**
 * The layers in which wet paint goes into a pan, each of the same volume.
 *
 * @param poursMl wet paint of each layer, in the order they go in
 * @param dryingDays from the first layer until the last is dry
 */
public record FillLayers(List<Double> poursMl, double dryingDays) {
  /**
   * A pan is never filled in more layers; one filled to the brim then stands above it while wet.
   */
  public static final int MOST = 12;

  public FillLayers {
    poursMl = List.copyOf(poursMl);
  }

  /**
   * The fewest layers in which so much wet paint goes into a pan.
   *
   * <pre>
   * n pours of p = wet / n, each shrunk by s before the next:
   *   p ≤ thickest                              a thick layer stays soft inside
   *   held + (n − 1)·p·(1 − s) + p ≤ brim       the last one does not run over
   * </pre>
   *
   * @param wetMl to go in, above 0
   * @param heldMl dry paint there already
   * @param brimMl what the pan holds
   * @param thickestMl the most wet paint in one layer, above 0
   */
  public static FillLayers of(
      double wetMl, double heldMl, double brimMl, double thickestMl, FillPractice practice) {
    int layers = 1;
    while (layers < MOST && !fits(wetMl, layers, heldMl, brimMl, thickestMl, practice)) {
      layers++;
    }
    List<Double> pours = new ArrayList<>();
    for (int i = 0; i < layers; i++) {
      pours.add(wetMl / layers);
    }
    return new FillLayers(pours, layers * practice.dryingDays());
  }

  private static boolean fits(
      double wetMl,
      int layers,
      double heldMl,
      double brimMl,
      double thickestMl,
      FillPractice practice) {
    double hair = 1e-9;
    double pour = wetMl / layers;
    double highest = heldMl + (layers - 1) * pour * (1 - practice.shrinkage()) + pour;
    return pour <= thickestMl + hair && highest <= brimMl + hair;
  }
}
