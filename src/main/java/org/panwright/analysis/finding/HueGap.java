package org.panwright.analysis.finding;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.panwright.analysis.reach.Ring;
import org.panwright.colour.Hue;
import org.panwright.colour.HueWord;
import org.panwright.kit.Edit;

/**
 * An arc of the hue circle that the lineup cannot reach cleanly although the shelf can.
 *
 * @param fromDeg where it starts, OKLCh degrees
 * @param toDeg where it ends, going up; equal to {@code fromDeg} for the whole circle
 * @param best the lineup's best chroma within the arc
 * @param possible the shelf's best chroma within the arc
 * @param suggestPaintId the owned paint that closes most of it, if one helps
 * @param closes the share of the missing chroma that paint makes good, 0..1
 * @param giveUpPaintId the lineup paint that could leave its well for it at the least loss, if the
 *     box is full
 * @param cure the edit that makes the exchange; empty where it would lose more than it wins
 */
public record HueGap(
    double fromDeg,
    double toDeg,
    double best,
    double possible,
    Optional<String> suggestPaintId,
    double closes,
    Optional<String> giveUpPaintId,
    Optional<Edit> cure)
    implements Finding {
  /** The extent of the arc in degrees, above 0 and up to 360. */
  public double arcDeg() {
    return arcDeg(fromDeg, toDeg);
  }

  /** The hue words of the arc's steps, from its start upwards, each once. */
  public List<HueWord> hues() {
    return hues(fromDeg, toDeg);
  }

  /** The hue words of the steps of any arc, from its start upwards, each once. */
  public static List<HueWord> hues(double fromDeg, double toDeg) {
    Set<HueWord> words = new LinkedHashSet<>();
    for (double way = Ring.STEP_DEG / 2; way < arcDeg(fromDeg, toDeg); way += Ring.STEP_DEG) {
      words.add(HueWord.of(fromDeg + way));
    }
    return new ArrayList<>(words);
  }

  private static double arcDeg(double fromDeg, double toDeg) {
    double arc = Hue.arc(fromDeg, toDeg);
    return arc == 0 ? 360 : arc;
  }

  @Override
  public FindingKind kind() {
    return FindingKind.HUE_GAP;
  }

  @Override
  public String about() {
    return HueWord.of(fromDeg + arcDeg() / 2).name().toLowerCase(Locale.ROOT);
  }

  @Override
  public List<String> paintIds() {
    return Stream.concat(suggestPaintId.stream(), giveUpPaintId.stream()).toList();
  }

  /** Missing chroma as a share of the possible, weighted by the extent of the arc against 90°. */
  @Override
  public double severity() {
    return Math.min(1, (1 - best / possible) * Math.min(1, arcDeg() / 90));
  }
}
