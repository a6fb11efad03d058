package org.panwright.analysis.finding;

import java.util.List;
import java.util.Optional;
import org.panwright.kit.Edit;
import org.panwright.paint.Lightfastness;

/**
 * A paint of the lineup that fades.
 *
 * @param paintId the paint
 * @param lightfastness its category
 * @param fugitive whether one of its pigments is known to fade within years
 * @param insteadPaintId an owned, lightfast paint of nearly the same colour, if there is one
 * @param instead the ΔE00 to it, mean of masstone and tint; 0 without one
 * @param cure the edit that puts it in place of this one
 */
public record Fading(
    String paintId,
    Lightfastness lightfastness,
    boolean fugitive,
    Optional<String> insteadPaintId,
    double instead,
    Optional<Edit> cure)
    implements Finding {
  @Override
  public FindingKind kind() {
    return FindingKind.FADING;
  }

  @Override
  public String about() {
    return paintId;
  }

  @Override
  public List<String> paintIds() {
    return insteadPaintId.map(id -> List.of(paintId, id)).orElse(List.of(paintId));
  }

  /** V 0.8, IV or fugitive 0.65, III 0.5. */
  @Override
  public double severity() {
    if (lightfastness == Lightfastness.V) {
      return 0.8;
    }
    return fugitive || lightfastness == Lightfastness.IV ? 0.65 : 0.5;
  }
}
