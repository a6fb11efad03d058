package org.panwright.swatch.kept;

import java.util.List;
import java.util.Optional;
import org.panwright.paint.Admixture;
import org.panwright.paint.Optics;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Shelf;
import org.panwright.swatch.coat.SwatchSet;

/** What is known of the paints that are stirred into swatches: by default PW6 and PBk7. */
final class Companions {
  private static final String WHITE = "a white";
  private static final String BLACK = "a black";

  private Companions() {}

  /** The name an admixture goes by in a {@link SwatchSet}. */
  static String id(Admixture other) {
    return switch (other.kind()) {
      case WHITE -> WHITE;
      case BLACK -> BLACK;
      case PAINT -> other.paintId();
    };
  }

  /** Its optics as known so far; empty if it is on no shelf and in no library. */
  static Optional<Optics> optics(Admixture other, Shelf shelf, PigmentLibrary library) {
    return switch (other.kind()) {
      case WHITE -> pigment("PW6", library);
      case BLACK -> pigment("PBk7", library);
      case PAINT -> shelf.find(other.paintId()).map((Paint paint) -> paint.optics(library));
    };
  }

  private static Optional<Optics> pigment(String code, PigmentLibrary library) {
    return library
        .find(PigmentName.of(code))
        .map(known -> library.estimate(List.of(new PigmentShare(known.name(), 1))));
  }
}
