package org.panwright.kit;

/** What is left in a tube, as the painter knows it: by volume, or by weighing the tube. */
public sealed interface Remainder {
  /** The wet paint left, in ml. */
  double ml();

  /** What is left after {@code usedMl} more is pressed out; never below nothing. */
  Remainder less(double usedMl);

  /**
   * So many millilitres.
   *
   * @param ml 0..1000
   */
  record ByVolume(double ml) implements Remainder {
    public ByVolume {
      if (!(ml >= 0 && ml <= 1000)) {
        throw new IllegalArgumentException("what is left lies in 0..1000 ml, was " + ml);
      }
    }

    @Override
    public Remainder less(double usedMl) {
      return new ByVolume(Math.max(0, ml - usedMl));
    }
  }

  /**
   * Weighed: {@code (gross − empty) / density}.
   *
   * @param grossG the tube as it lies on the scales, 0..5000 g, not below {@code emptyG}
   * @param emptyG the same tube emptied, 0..5000 g
   * @param densityGPerMl of the wet paint, 0.5..5
   */
  record ByWeight(double grossG, double emptyG, double densityGPerMl) implements Remainder {
    public ByWeight {
      if (!(emptyG >= 0 && grossG >= emptyG && grossG <= 5000)) {
        throw new IllegalArgumentException(
            "a tube weighs from its empty weight to 5000 g, was %s with %s empty"
                .formatted(grossG, emptyG));
      }
      if (!(densityGPerMl >= 0.5 && densityGPerMl <= 5)) {
        throw new IllegalArgumentException("density lies in 0.5..5 g/ml, was " + densityGPerMl);
      }
    }

    @Override
    public double ml() {
      return (grossG - emptyG) / densityGPerMl;
    }

    @Override
    public Remainder less(double usedMl) {
      return new ByWeight(Math.max(emptyG, grossG - usedMl * densityGPerMl), emptyG, densityGPerMl);
    }
  }
}
