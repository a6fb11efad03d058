package org.panwright.app.page;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.panwright.app.fx.TypedNumber;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Srgb;

/** A colour as people type it: three numbers of CIELAB, or a hash and six digits of sRGB. */
final class TypedColour {
  private static final Pattern HEX = Pattern.compile("#?[0-9a-fA-F]{6}");
  private static final Pattern THREE =
      Pattern.compile("(\\S+?)(?:[,;]\\s*|\\s+)(\\S+?)(?:[,;]\\s*|\\s+)(\\S+)");
  private static final double FARTHEST = 150;

  private TypedColour() {}

  /** The colour under D65; empty if the text is none a coat of paint can have. */
  static Optional<Lab> read(String text) {
    String typed = text.strip();
    return HEX.matcher(typed).matches() ? hex(typed) : numbers(typed);
  }

  private static Optional<Lab> hex(String typed) {
    int rgb = Integer.parseInt(typed.substring(typed.length() - 6), 16);
    Srgb srgb = Srgb.ofBytes(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255);
    return possible(Lab.of(srgb.toXyzD65(), Light.D65.white()));
  }

  private static Optional<Lab> numbers(String typed) {
    Matcher parts = THREE.matcher(typed);
    if (!parts.matches()) {
      return Optional.empty();
    }
    OptionalDouble l = TypedNumber.read(parts.group(1));
    OptionalDouble a = TypedNumber.read(parts.group(2));
    OptionalDouble b = TypedNumber.read(parts.group(3));
    return l.isPresent() && a.isPresent() && b.isPresent()
        ? possible(new Lab(l.getAsDouble(), a.getAsDouble(), b.getAsDouble()))
        : Optional.empty();
  }

  private static Optional<Lab> possible(Lab lab) {
    return Optional.of(lab)
        .filter(c -> c.l() > 0 && c.l() < 100)
        .filter(c -> Math.abs(c.a()) <= FARTHEST && Math.abs(c.b()) <= FARTHEST);
  }
}
