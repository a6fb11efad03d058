package org.panwright.kit;

/**
 * How much each thing a lineup can do counts when lineups are proposed; only the proportions
 * matter.
 *
 * @param ring clean hues
 * @param reach different colours
 * @param subjects colours of the place; counts for nothing where none is given
 * @param darks a deep dark once dry
 * @param transparency transparent paints
 */
public record Weights(
    double ring, double reach, double subjects, double darks, double transparency) {
  /** What counts unless the painter says otherwise; ours. */
  public static final Weights USUAL = new Weights(4, 3, 2, 1, 1);

  /** Heaviest weight. */
  public static final double MOST = 10;

  public Weights {
    for (double weight : new double[] {ring, reach, subjects, darks, transparency}) {
      if (!(weight >= 0 && weight <= MOST)) {
        throw new IllegalArgumentException("weights lie in 0..10, was " + weight);
      }
    }
  }

  /** The weight of one aim. */
  public double of(Aim aim) {
    return switch (aim) {
      case RING -> ring;
      case REACH -> reach;
      case SUBJECTS -> subjects;
      case DARKS -> darks;
      case TRANSPARENCY -> transparency;
    };
  }

  /** The same with another weight for one aim. */
  public Weights with(Aim aim, double weight) {
    return new Weights(
        aim == Aim.RING ? weight : ring,
        aim == Aim.REACH ? weight : reach,
        aim == Aim.SUBJECTS ? weight : subjects,
        aim == Aim.DARKS ? weight : darks,
        aim == Aim.TRANSPARENCY ? weight : transparency);
  }
}
