package org.panwright.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.analysis.arrange.FitCheck;
import org.panwright.kit.Box;
import org.panwright.kit.PanKind;
import org.panwright.kit.Stock;
import org.panwright.kit.Well;

/** Whether pans fit their wells, in sentences. */
public final class FitWords {
  /** Said where every pan fits. */
  public static final String ALL_FIT = "Every pan fits its well.";

  /** Stands beside the sizes. */
  public static final String USUAL = "Usual sizes; makers differ by 1–2 mm. Measure your own pans.";

  /** Said where the depth of a box is not known. */
  public static final String NO_DEPTH =
      "Give the box's depth to learn which pans stand above the rim.";

  private FitWords() {}

  /** One well that needs a look, for example "Well 3: the half pan sits loose, …". */
  public static String sentence(FitCheck.WellFit fit, Box box, Stock stock) {
    String pan = stock.pan(fit.panId()).map(PanKind::name).orElse("pan");
    List<String> clauses = new ArrayList<>();
    seat(fit).ifPresent(clauses::add);
    if (fit.standsProud()) {
      clauses.add(
          "stands %s above the rim%s"
              .formatted(
                  mm(fit.proudMm().getAsDouble()),
                  fit.raisedMm() > 0
                      ? ", with the magnet of %s under it".formatted(mm(fit.raisedMm()))
                      : ""));
    }
    if (clauses.isEmpty()) {
      clauses.add("fits");
    }
    return "%s: the %s %s."
        .formatted(label(box.find(fit.wellId())), pan, String.join(" and ", clauses));
  }

  /** All that need a look, and the depth if it is not known; or that all fit. */
  public static List<String> sentences(FitCheck check, Box box, Stock stock) {
    List<String> sentences = new ArrayList<>();
    check.wrong().forEach(fit -> sentences.add(sentence(fit, box, stock)));
    if (sentences.isEmpty()) {
      sentences.add(ALL_FIT);
    }
    if (box.depthMm().isEmpty() && !check.wells().isEmpty()) {
      sentences.add(NO_DEPTH);
    }
    return sentences;
  }

  /** How many of a kind go in a row, for example "half pan: 6 in a row, 7 by pressing". */
  public static String row(FitCheck.RowFit row, Stock stock) {
    String pan = stock.pan(row.panId()).map(PanKind::name).orElse("pan");
    if (row.upright() == 0 && row.turned() == 0) {
      return pan + ": none goes in";
    }
    String turned = row.turned() > 0 ? "; turned, " + count(row.turned(), row.turnedPressed()) : "";
    return pan + ": " + count(row.upright(), row.pressed()) + " in a row" + turned;
  }

  private static String count(int plain, int pressed) {
    return pressed > plain ? "%d (%d by pressing)".formatted(plain, pressed) : "" + plain;
  }

  private static Optional<String> seat(FitCheck.WellFit fit) {
    if (fit.largerThanBox()) {
      return Optional.of("is larger than the box");
    }
    return switch (fit.seat()) {
      case FITS -> Optional.empty();
      case LOOSE ->
          Optional.of(
              fit.lengthPlayMm() >= fit.widthPlayMm()
                  ? "sits loose, with %s to spare lengthwise".formatted(mm(fit.lengthPlayMm()))
                  : "sits loose, with %s to spare across".formatted(mm(fit.widthPlayMm())));
      case TIGHT -> Optional.of("is " + over(fit) + " and has to be pressed in");
      case NOT_IN -> Optional.of("does not go in: it is " + over(fit));
    };
  }

  private static String over(FitCheck.WellFit fit) {
    return fit.lengthPlayMm() <= fit.widthPlayMm()
        ? mm(-fit.lengthPlayMm()) + " too long"
        : mm(-fit.widthPlayMm()) + " too wide";
  }

  private static String mm(double mm) {
    return WordParts.number(Math.rint(mm * 10) / 10) + " mm";
  }

  private static String label(Optional<Well> well) {
    return well.map(Well::label)
        .map(l -> l.chars().allMatch(Character::isDigit) ? "Well " + l : l)
        .orElse("A well");
  }
}
