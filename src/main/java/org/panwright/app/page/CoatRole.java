package org.panwright.app.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.panwright.paint.Admixture;
import org.panwright.paint.CoatReading;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.PaintedCoat.Ground;
import org.panwright.paint.PaintedCoat.Strength;

/** What a reading is taken for when it is kept with a paint. */
public enum CoatRole {
  FULL,
  WASH,
  TINT,
  TONE,
  ON_BLACK,
  COAT,
  /** Not a coat: the bare paper beneath the others. */
  PAPER,
  /** Nothing of this paint. */
  LEAVE_OUT;

  /** What a sample of this name most likely is. */
  static CoatRole guess(String name) {
    String said = name.toLowerCase(Locale.ROOT);
    if (said.contains("paper") || said.contains("bare")) {
      return PAPER;
    }
    if (said.contains("white") || said.contains("tint")) {
      return TINT;
    }
    if (said.contains("line")) {
      return ON_BLACK;
    }
    if (said.contains("black") || said.contains("tone")) {
      return TONE;
    }
    if (said.contains("wash") || said.contains("thin") || said.contains("dilut")) {
      return WASH;
    }
    return said.contains("full") || said.contains("mass") ? FULL : COAT;
  }

  /** The first of some roles that no coat kept so far has; the first of all if each is had. */
  static CoatRole next(List<CoatRole> roles, List<PaintedCoat> kept) {
    return roles.stream()
        .filter(role -> kept.stream().noneMatch(role::isOf))
        .findFirst()
        .orElse(roles.get(0));
  }

  private boolean isOf(PaintedCoat kept) {
    return coat(kept.id(), kept.dry())
        .filter(coat -> coat.strength() == kept.strength() && coat.over() == kept.over())
        .filter(coat -> kind(coat).equals(kind(kept)))
        .isPresent();
  }

  private static Optional<Admixture.Kind> kind(PaintedCoat coat) {
    return coat.mixedWith().map(Admixture::kind);
  }

  /** The reading as a coat; empty if it is none. */
  Optional<PaintedCoat> coat(String id, CoatReading reading) {
    return switch (this) {
      case FULL -> Optional.of(PaintedCoat.of(id, reading, Strength.FULL));
      case WASH -> Optional.of(PaintedCoat.of(id, reading, Strength.WASH));
      case COAT -> Optional.of(PaintedCoat.of(id, reading, Strength.UNKNOWN));
      case TINT ->
          Optional.of(PaintedCoat.of(id, reading, Strength.FULL).withMixedWith(Admixture.white()));
      case TONE ->
          Optional.of(PaintedCoat.of(id, reading, Strength.FULL).withMixedWith(Admixture.black()));
      case ON_BLACK ->
          Optional.of(
              PaintedCoat.of(id, reading, Strength.FULL)
                  .withGround(Ground.BLACK_LINE, Optional.empty()));
      case PAPER, LEAVE_OUT -> Optional.empty();
    };
  }
}
