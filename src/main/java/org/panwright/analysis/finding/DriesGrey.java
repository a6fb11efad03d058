package org.panwright.analysis.finding;

import java.util.List;
import java.util.Optional;
import org.panwright.analysis.mud.Dark;
import org.panwright.kit.Edit;

/**
 * Neutral mixes of a lineup that look a real dark while wet and dry to a grey, in a lineup that has
 * a dark that stays.
 *
 * @param deceivers the darkest such mixes while wet, of the strongest wash, darkest first; at least
 *     one
 * @param count how many pairs and paints alone make such a mix
 * @param stays the lineup's darkest dry mix
 * @param remedy the exchange with which most of them are gone, if one does that
 */
public record DriesGrey(List<Dark> deceivers, int count, Dark stays, Optional<Remedy> remedy)
    implements Finding {
  /** A mix of more CIELAB chroma than this is a dark colour, not taken for a black. */
  public static final double NEUTRAL_BELOW = 12;

  /**
   * From this L* once dry a mix that looked a real dark is seen to be a grey; just above the bound.
   */
  public static final double GREY_FROM = Dark.REAL_BELOW + 2;

  public DriesGrey {
    deceivers = List.copyOf(deceivers);
  }

  /** The same finding with the remedy that was found for it. */
  public DriesGrey with(Optional<Remedy> found) {
    return new DriesGrey(deceivers, count, stays, found);
  }

  @Override
  public FindingKind kind() {
    return FindingKind.DRIES_GREY;
  }

  @Override
  public String about() {
    return "";
  }

  @Override
  public List<String> paintIds() {
    return deceivers.stream()
        .flatMap(dark -> dark.recipe().portions().stream())
        .map(portion -> portion.paintId())
        .distinct()
        .toList();
  }

  /** A remark: there is a dark that stays. */
  @Override
  public double severity() {
    return 0.09;
  }

  @Override
  public double extent() {
    return count;
  }

  @Override
  public Optional<Edit> cure() {
    return remedy.map(Remedy::edit);
  }
}
