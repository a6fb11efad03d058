package org.panwright.app.fill;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.panwright.app.fx.TypedNumber;
import org.panwright.kit.Remainder;
import org.panwright.kit.Tube;
import org.panwright.words.FillViewWords;

/** A tube while it is typed; it may be wrong, and says how. */
record TubeDraft(
    String paintId,
    String size,
    boolean weighed,
    String left,
    String gross,
    String empty,
    String density,
    String price,
    String opened,
    String note) {
  private static final int DECIMALS = 3;

  /** Density of tube paint where nothing better is known, in g/ml: an estimate. */
  private static final String USUAL_DENSITY = "1.3";

  /** A full tube of 5 ml of a paint. */
  static TubeDraft fresh(String paintId) {
    return new TubeDraft(paintId, "5", false, "5", "", "", USUAL_DENSITY, "", "", "");
  }

  static TubeDraft of(Tube tube) {
    Optional<Remainder.ByWeight> weight =
        tube.left() instanceof Remainder.ByWeight w ? Optional.of(w) : Optional.empty();
    return new TubeDraft(
        tube.paintId(),
        figure(tube.sizeMl()),
        weight.isPresent(),
        figure(tube.leftMl()),
        weight.map(w -> figure(w.grossG())).orElse(""),
        weight.map(w -> figure(w.emptyG())).orElse(""),
        weight.map(w -> figure(w.densityGPerMl())).orElse(USUAL_DENSITY),
        tube.price().isPresent() ? figure(tube.price().getAsDouble()) : "",
        tube.opened().map(LocalDate::toString).orElse(""),
        tube.note());
  }

  /** The first thing that is not right, as a sentence; empty if it can be a tube. */
  Optional<String> problem(LocalDate today) {
    if (paintId.isEmpty()) {
      return Optional.of(FillViewWords.CHOOSE_PAINT);
    }
    OptionalDouble sizeMl = TypedNumber.read(size);
    if (sizeMl.isEmpty() || !(sizeMl.getAsDouble() > 0 && sizeMl.getAsDouble() <= 1000)) {
      return Optional.of(FillViewWords.BAD_SIZE);
    }
    Optional<String> wrong = weighed ? weightProblem() : volumeProblem();
    if (wrong.isPresent()) {
      return wrong;
    }
    Remainder remainder = remainder();
    if (remainder.ml() > Tube.mostMl(sizeMl.getAsDouble(), remainder)) {
      return Optional.of(
          FillViewWords.moreThanSize(
              TypedNumber.write(remainder.ml(), 2), TypedNumber.write(sizeMl.getAsDouble(), 2)));
    }
    OptionalDouble typedPrice = TypedNumber.read(price);
    boolean priceRight =
        price.isBlank()
            || (typedPrice.isPresent()
                && typedPrice.getAsDouble() >= 0
                && typedPrice.getAsDouble() <= 1e6);
    return priceRight
        ? TypedDay.problem(opened, true, today)
        : Optional.of(FillViewWords.BAD_PRICE);
  }

  /** The tube; only if nothing is wrong. */
  Tube toTube(String id) {
    return new Tube(
        id,
        paintId,
        number(size),
        remainder(),
        price.isBlank() ? OptionalDouble.empty() : OptionalDouble.of(number(price)),
        TypedDay.read(opened),
        note.strip());
  }

  private Optional<String> volumeProblem() {
    OptionalDouble ml = TypedNumber.read(left);
    return ml.isPresent() && ml.getAsDouble() >= 0 && ml.getAsDouble() <= 1000
        ? Optional.empty()
        : Optional.of(FillViewWords.BAD_LEFT);
  }

  private Optional<String> weightProblem() {
    OptionalDouble grossG = TypedNumber.read(gross);
    OptionalDouble emptyG = TypedNumber.read(empty);
    boolean right =
        grossG.isPresent()
            && emptyG.isPresent()
            && emptyG.getAsDouble() >= 0
            && grossG.getAsDouble() >= emptyG.getAsDouble()
            && grossG.getAsDouble() <= 5000;
    if (!right) {
      return Optional.of(FillViewWords.BAD_WEIGHT);
    }
    OptionalDouble perMl = TypedNumber.read(density);
    return perMl.isPresent() && perMl.getAsDouble() >= 0.5 && perMl.getAsDouble() <= 5
        ? Optional.empty()
        : Optional.of(FillViewWords.BAD_DENSITY);
  }

  private Remainder remainder() {
    return weighed
        ? new Remainder.ByWeight(number(gross), number(empty), number(density))
        : new Remainder.ByVolume(number(left));
  }

  private static double number(String text) {
    return TypedNumber.read(text).orElseThrow();
  }

  private static String figure(double value) {
    return TypedNumber.write(value, DECIMALS);
  }
}
