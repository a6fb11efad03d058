package org.panwright.swatch.coat;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Swatches that are fitted together because paints recur in them; loads are in one unit.
 *
 * @param swatches in the order of the sheet or file
 */
public record SwatchSet(List<Swatch> swatches) {
  public SwatchSet {
    swatches = List.copyOf(swatches);
  }

  /** The paints that occur, sorted by name. */
  public List<String> paints() {
    TreeSet<String> names = new TreeSet<>();
    for (Swatch swatch : swatches) {
      swatch.paints().forEach(share -> names.add(share.paint()));
    }
    return List.copyOf(names);
  }

  /** The same swatches as if only their colours had been read, for asking what spectra add. */
  public SwatchSet byColour() {
    return new SwatchSet(swatches.stream().map(Swatch::byColour).toList());
  }

  /** The set with another swatch in the place of one. */
  public SwatchSet with(int index, Swatch changed) {
    List<Swatch> all = new ArrayList<>(swatches);
    all.set(index, changed);
    return new SwatchSet(all);
  }

  /** The set without one swatch. */
  public SwatchSet without(int index) {
    List<Swatch> rest = new ArrayList<>(swatches);
    rest.remove(index);
    return new SwatchSet(rest);
  }

  /**
   * The load of a usual coat: the geometric mean over the coats of one paint alone, or over all
   * coats where there are none.
   */
  public double usualLoad() {
    List<Swatch> singles = swatches.stream().filter(Swatch::isSingle).toList();
    List<Swatch> counted = singles.isEmpty() ? swatches : singles;
    return Math.exp(
        counted.stream()
            .mapToDouble(swatch -> Math.log(swatch.totalLoad()))
            .average()
            .orElseThrow());
  }
}
