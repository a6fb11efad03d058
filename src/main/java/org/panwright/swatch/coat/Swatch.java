package org.panwright.swatch.coat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * One coat the painter painted, let dry and read.
 *
 * @param name as the painter or the file calls it
 * @param paints what lies in the coat, each paint once, at least one
 * @param reading of the dry coat
 * @param ground a reading of what lies beneath: the bare paper, or a painted line
 * @param loadDoubt how far the whole load may be off: a standard deviation of its logarithm, 0 if
 *     it is known
 */
public record Swatch(
    String name, List<PaintLoad> paints, Reading reading, Reading ground, double loadDoubt) {
  /** A swatch whose load is known. */
  public Swatch(String name, List<PaintLoad> paints, Reading reading, Reading ground) {
    this(name, paints, reading, ground, 0);
  }

  public Swatch {
    if (!(loadDoubt >= 0 && loadDoubt < 10)) {
      throw new IllegalArgumentException("doubt of a load must lie in 0..10, was " + loadDoubt);
    }
    if (name.isBlank()) {
      throw new IllegalArgumentException("a swatch has a name");
    }
    paints = List.copyOf(paints);
    if (paints.isEmpty()) {
      throw new IllegalArgumentException("a swatch has a paint in it: " + name);
    }
    Set<String> seen = new HashSet<>();
    for (PaintLoad share : paints) {
      if (!seen.add(share.paint())) {
        throw new IllegalArgumentException(name + " names twice the paint " + share.paint());
      }
    }
  }

  /** Whether one paint alone lies in the coat. */
  public boolean isSingle() {
    return paints.size() == 1;
  }

  /** Whether a paint lies in the coat. */
  public boolean holds(String paint) {
    return paints.stream().anyMatch(share -> share.paint().equals(paint));
  }

  /** All paint in the coat, in the unit of the loads. */
  public double totalLoad() {
    return paints.stream().mapToDouble(PaintLoad::load).sum();
  }

  /** The same swatch known by its colours alone. */
  Swatch byColour() {
    return new Swatch(
        name,
        paints,
        new Reading.OfColour(reading.lab()),
        new Reading.OfColour(ground.lab()),
        loadDoubt);
  }

  /** The same swatch if the whole load is {@code factor} times what was noted. */
  public Swatch loaded(double factor) {
    return new Swatch(name, paints(factor), reading, ground, loadDoubt);
  }

  /** Its paints if the whole load is {@code factor} times what was noted. */
  public List<PaintLoad> paints(double factor) {
    return paints.stream().map(p -> new PaintLoad(p.paint(), p.load() * factor)).toList();
  }
}
