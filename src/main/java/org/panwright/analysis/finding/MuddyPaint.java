package org.panwright.analysis.finding;

import java.util.List;
import java.util.Optional;
import org.panwright.analysis.mud.Mud;
import org.panwright.kit.Edit;

/**
 * A paint that takes much more chroma out of its mixes than the others of the lineup do.
 *
 * @param paintId the paint
 * @param loss its mean loss of chroma in pairs, 0..1; see {@link Mud}
 * @param typical the middle one of the other paints' losses
 * @param insteadPaintId an owned paint of nearly the same hue that mixes cleaner here, if any
 * @param insteadLoss the mean loss with that one in its place; 0 without one
 * @param cure the edit that puts it in place of this one
 */
public record MuddyPaint(
    String paintId,
    double loss,
    double typical,
    Optional<String> insteadPaintId,
    double insteadLoss,
    Optional<Edit> cure)
    implements Finding {
  /** Less loss than this is never worth telling. */
  public static final double LOSS_FROM = 0.28;

  /** It must lose this many times what is typical of the others. */
  public static final double TIMES_TYPICAL = 1.6;

  /** The same finding with the exchange that cures it and the loss of the paint that comes in. */
  public MuddyPaint with(Remedy remedy, double loss) {
    return new MuddyPaint(
        paintId, this.loss, typical, remedy.arrivingId(), loss, Optional.of(remedy.edit()));
  }

  @Override
  public FindingKind kind() {
    return FindingKind.MUDDY_PAINT;
  }

  @Override
  public String about() {
    return paintId;
  }

  @Override
  public List<String> paintIds() {
    return insteadPaintId.map(id -> List.of(paintId, id)).orElse(List.of(paintId));
  }

  /** 0.1 at the bound of telling, 0.22 for a paint that greys everything. */
  @Override
  public double severity() {
    return 0.1 + 0.12 * Math.min(1, (loss - LOSS_FROM) / (1 - LOSS_FROM));
  }
}
