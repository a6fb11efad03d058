package org.panwright.analysis.finding;

import java.util.List;
import java.util.Optional;
import org.panwright.kit.Edit;

/**
 * A tried or wished-for paint that would bring the lineup hues which nothing on the shelf brings.
 *
 * @param paintId the paint
 * @param fromDeg where the widest such arc starts, OKLCh degrees
 * @param toDeg where it ends, going up
 * @param possible the best chroma of the shelf within the arc
 * @param brought the best chroma with that paint
 * @param remedy the exchange that puts it in as if it were owned, if that is no loss
 */
public record Wish(
    String paintId,
    double fromDeg,
    double toDeg,
    double possible,
    double brought,
    Optional<Remedy> remedy)
    implements Finding {
  /** The same finding with the remedy that was found for it. */
  public Wish with(Optional<Remedy> found) {
    return new Wish(paintId, fromDeg, toDeg, possible, brought, found);
  }

  @Override
  public FindingKind kind() {
    return FindingKind.WISH;
  }

  @Override
  public String about() {
    return paintId;
  }

  @Override
  public List<String> paintIds() {
    return List.of(paintId);
  }

  /** A remark: it cannot be mended from the shelf. */
  @Override
  public double severity() {
    return 0.08;
  }

  @Override
  public Optional<Edit> cure() {
    return remedy.map(Remedy::edit);
  }
}
