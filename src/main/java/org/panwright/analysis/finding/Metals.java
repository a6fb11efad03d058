package org.panwright.analysis.finding;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.panwright.kit.Edit;

/**
 * Paints of the lineup whose pigments hold metals that call for care with dust, brush and rinse
 * water. A remark, not a hazard classification: the maker's safety sheet decides.
 *
 * @param holders the paints by chemical symbol of the metal, in the order of the wells
 * @param remedy the nearest paint without any for one of them, if there is one
 */
public record Metals(Map<String, List<String>> holders, Optional<Remedy> remedy)
    implements Finding {
  public Metals {
    holders = java.util.Collections.unmodifiableMap(new TreeMap<>(holders));
  }

  /** The same finding with the remedy that was found for it. */
  public Metals with(Optional<Remedy> found) {
    return new Metals(holders, found);
  }

  @Override
  public FindingKind kind() {
    return FindingKind.METALS;
  }

  /** The metals: one more of them is told again. */
  @Override
  public String about() {
    return String.join("+", holders.keySet());
  }

  @Override
  public List<String> paintIds() {
    return holders.values().stream().flatMap(List::stream).distinct().toList();
  }

  @Override
  public double severity() {
    return 0.1;
  }

  /** How many paints hold any. */
  @Override
  public double extent() {
    return paintIds().size();
  }

  @Override
  public Optional<Edit> cure() {
    return remedy.map(Remedy::edit);
  }
}
