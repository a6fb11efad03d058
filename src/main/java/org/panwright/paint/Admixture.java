package org.panwright.paint;

import java.util.Objects;

/**
 * What else was stirred into a coat, and how much of the paint in it that is.
 *
 * @param kind a white, a black, or a certain paint of the shelf
 * @param paintId the paint of the shelf; empty for a white or black that is not on it
 * @param share of the whole paint by volume, above 0 and below 1; 0.5 is one to one
 */
public record Admixture(Kind kind, String paintId, double share) {
  /** The sorts of admixture. */
  public enum Kind {
    /** Any opaque white: the coat is a tint. */
    WHITE,
    /** Any black: the coat is a tone. */
    BLACK,
    /** A paint of the shelf. */
    PAINT
  }

  public Admixture {
    Objects.requireNonNull(kind, "kind");
    if ((kind == Kind.PAINT) == paintId.isBlank()) {
      throw new IllegalArgumentException(
          "an admixture names a paint exactly if it is one, was " + kind + " “" + paintId + "”");
    }
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException("share must lie between 0 and 1, was " + share);
    }
  }

  /** A white, one to one. */
  public static Admixture white() {
    return new Admixture(Kind.WHITE, "", 0.5);
  }

  /** A black, one to one. */
  public static Admixture black() {
    return new Admixture(Kind.BLACK, "", 0.5);
  }

  /** A paint of the shelf. */
  public static Admixture of(String paintId, double share) {
    return new Admixture(Kind.PAINT, paintId, share);
  }
}
