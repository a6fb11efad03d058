package org.panwright.analysis;

import java.util.Optional;
import org.panwright.colour.Hue;
import org.panwright.kit.Edit;

/**
 * An arc of the hue circle that the lineup cannot reach cleanly although the shelf can.
 *
 * @param fromDeg where it starts, OKLCh degrees
 * @param toDeg where it ends, going up
 * @param best the lineup's best chroma within the arc
 * @param possible the shelf's best chroma within the arc
 * @param suggestPaintId the shelf paint that closes most of it, if one helps
 * @param closes the share of the missing chroma that paint makes good, 0..1
 * @param giveUpPaintId the lineup paint that could leave its well for it at the least loss, if the
 *     box is full
 * @param cure the edit that makes the exchange
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
  /** The extent of the arc in degrees. */
  public double arcDeg() {
    return Hue.arc(fromDeg, toDeg);
  }

  /** Missing chroma as a share of the possible, weighted by the extent of the arc against 90°. */
  @Override
  public double severity() {
    return Math.min(1, (1 - best / possible) * Math.min(1, arcDeg() / 90));
  }
}
