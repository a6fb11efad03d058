package org.panwright.analysis.balance;

import java.util.Optional;
import org.panwright.paint.HueFamily;
import org.panwright.paint.Paint;
import org.panwright.paint.Pigment;
import org.panwright.paint.PigmentLibrary;

/** Where a painter files paints: by the pigment, or by a milk wash if there are several. */
public final class PaintGroups {
  private final PigmentLibrary library;
  private final Looks looks;

  /** Files the paints of a table whose looks these are. */
  public PaintGroups(PigmentLibrary library, Looks looks) {
    this.library = library;
    this.looks = looks;
  }

  /** The coarse group of a paint. */
  public HueGroup of(Paint paint) {
    return family(paint).map(HueGroup::of).orElseGet(() -> HueGroup.of(looks.body(paint.id())));
  }

  /** The neighbour a paint leans to, if it is of one known pigment and leans. */
  public Optional<HueFamily> leaning(Paint paint) {
    return family(paint).flatMap(f -> Leaning.of(f, looks.body(paint.id()).hueDeg()));
  }

  /** The family of a paint of one known pigment. */
  private Optional<HueFamily> family(Paint paint) {
    return paint.pigments().size() == 1
        ? library.find(paint.pigments().get(0).pigment()).map(Pigment::family)
        : Optional.empty();
  }
}
