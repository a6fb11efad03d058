package org.panwright.analysis.worth;

import java.util.List;
import java.util.Optional;
import org.panwright.analysis.mud.Dark;

/** What a lineup can do, as far as findings ask. */
public final class Abilities {
  private final double[] chroma;
  private final Optional<Dark> darkest;
  private final List<Earning> earnings;

  /**
   * @param chroma the highest chroma at each step of its hue ring
   * @param darkest its darkest dry mix, unless it is empty
   * @param earnings what each paint earns, in the order of the wells
   */
  public Abilities(double[] chroma, Optional<Dark> darkest, List<Earning> earnings) {
    this.chroma = chroma.clone();
    this.darkest = darkest;
    this.earnings = List.copyOf(earnings);
  }

  /** A fresh array of the ring's 72 chromas. */
  public double[] chroma() {
    return chroma.clone();
  }

  /** The darkest dry mix, unless the lineup is empty. */
  public Optional<Dark> darkest() {
    return darkest;
  }

  /** What each paint earns, in the order of the wells. */
  public List<Earning> earnings() {
    return earnings;
  }
}
