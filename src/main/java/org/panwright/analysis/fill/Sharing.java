package org.panwright.analysis.fill;

import java.util.List;

/** How a paint that is short is shared among the wells that want it. */
public enum Sharing {
  /** The least filled well is filled as far as can be, then the next: no well is left behind. */
  EVENLY {
    @Override
    double[] share(List<Claim> claims, double supplyMl) {
      double low = 0;
      double high = 1;
      // The paint all wells take up to a common level grows with the level: halve the interval.
      for (int step = 0; step < HALVINGS; step++) {
        double level = (low + high) / 2;
        if (total(claims, level) <= supplyMl) {
          low = level;
        } else {
          high = level;
        }
      }
      double level = total(claims, 1) <= supplyMl ? 1 : low;
      return claims.stream().mapToDouble(claim -> claim.upTo(level)).toArray();
    }
  },
  /** The wells are filled in the order of the lineups until nothing is left. */
  IN_ORDER {
    @Override
    double[] share(List<Claim> claims, double supplyMl) {
      double[] given = new double[claims.size()];
      double left = supplyMl;
      for (int i = 0; i < given.length; i++) {
        given[i] = Math.min(left, claims.get(i).upTo(1));
        left -= given[i];
      }
      return given;
    }
  };

  /** Enough for a double. */
  private static final int HALVINGS = 60;

  /**
   * What one well asks for.
   *
   * @param heldMl dry paint in it
   * @param targetMl dry paint it is to hold, above 0
   * @param wetPerDry wet paint that dries to one millilitre
   */
  record Claim(double heldMl, double targetMl, double wetPerDry) {
    /** Wet paint that brings it up to a share of its target, 0..1. */
    double upTo(double level) {
      return Math.max(0, level * targetMl - heldMl) * wetPerDry;
    }
  }

  /**
   * Wet paint for each claim, together at most {@code supplyMl}, none more than it asks.
   *
   * <p>EVENLY: the level L with Σ max(0, L·targetᵢ − heldᵢ)·wetPerDry = supply. No other sharing
   * has a higher least level: whoever had more would take it from one at L.
   */
  abstract double[] share(List<Claim> claims, double supplyMl);

  private static double total(List<Claim> claims, double level) {
    return claims.stream().mapToDouble(claim -> claim.upTo(level)).sum();
  }
}
