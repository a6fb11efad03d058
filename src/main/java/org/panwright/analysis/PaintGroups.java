package org.panwright.analysis;

import java.util.Optional;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.colour.Oklch;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Paint;
import org.panwright.paint.Pigment;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/** Where a painter files paints: by the pigment, or by a milk wash if there are several. */
final class PaintGroups {
  private final PigmentLibrary library;
  private final Mixer mixer;
  private final WashStrengths washes;

  PaintGroups(PigmentLibrary library, OpticsTable table, WashStrengths washes) {
    this.library = library;
    this.washes = washes;
    mixer = new Mixer(table);
  }

  /** The group of a paint of the table. */
  HueGroup of(Paint paint) {
    Optional<Pigment> only =
        paint.pigments().size() == 1
            ? library.find(paint.pigments().get(0).pigment())
            : Optional.empty();
    return only.map(pigment -> HueGroup.of(pigment.family()))
        .orElseGet(() -> HueGroup.of(milk(paint)));
  }

  /** The colour of a milk wash, dry. */
  Oklch milk(Paint paint) {
    return Oklab.ofD65(
            mixer.lab(Recipe.of(paint.id()), washes.load(Wash.MILK)).toXyz(Light.D65.white()))
        .toOklch();
  }
}
