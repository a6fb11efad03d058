package org.panwright.analysis.arrange;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.panwright.kit.Box;
import org.panwright.kit.FitTolerance;
import org.panwright.kit.Fixture;
import org.panwright.kit.FixtureKind;
import org.panwright.kit.PanKind;
import org.panwright.kit.Stock;
import org.panwright.kit.Well;

/**
 * Whether the pans fit the wells of a box.
 *
 * @param boxId the box
 * @param wells each well that holds a pan, in the order of the box
 * @param rows for each kind of pan how many go side by side
 */
public record FitCheck(String boxId, List<WellFit> wells, List<RowFit> rows) {
  /** How a pan sits in its well. */
  public enum Seat {
    /** Smaller than its well by the tolerance at most. */
    FITS,
    /** With more play than the tolerance allows. */
    LOOSE,
    /** Larger than its well, but within what makes differ: it may have to be pressed in. */
    TIGHT,
    /** Too large for its well. */
    NOT_IN
  }

  /**
   * One pan in its well.
   *
   * @param seat how it sits
   * @param lengthPlayMm well less pan along the pan's longer side; below 0 it is too long
   * @param widthPlayMm the same along its shorter side
   * @param raisedMm how far magnets lift it
   * @param proudMm how far it stands above the height at which the lid closes, below 0 if it stays
   *     under it; empty if the box's depth is not known
   * @param largerThanBox whether it does not even go into the empty box
   */
  public record WellFit(
      String wellId,
      String panId,
      Seat seat,
      double lengthPlayMm,
      double widthPlayMm,
      double raisedMm,
      OptionalDouble proudMm,
      boolean largerThanBox) {
    /** Whether it stands above the height at which the lid closes. */
    public boolean standsProud() {
      return proudMm.isPresent() && proudMm.getAsDouble() > 1e-9;
    }

    /** Whether the painter need not look at it. */
    public boolean isRight() {
      return seat == Seat.FITS && !standsProud();
    }
  }

  /**
   * How many pans of one kind go side by side along the hinge, wall to wall.
   *
   * @param upright with their shorter sides along the hinge
   * @param pressed the same if they run small by the tolerance: {@code ⌊width / (side −
   *     tolerance)⌋}
   * @param turned with their longer sides along the hinge
   * @param turnedPressed the same if they run small by the tolerance
   */
  public record RowFit(String panId, int upright, int pressed, int turned, int turnedPressed) {}

  public FitCheck {
    wells = List.copyOf(wells);
    rows = List.copyOf(rows);
  }

  /** Checks all wells of a box; dab places without a pan are passed over. */
  public static FitCheck of(Box box, Stock stock) {
    List<WellFit> wells = new ArrayList<>();
    for (Well well : box.wells()) {
      stock.panFor(well).ifPresent(pan -> wells.add(fit(box, well, pan, stock.tolerance())));
    }
    List<RowFit> rows = new ArrayList<>();
    for (PanKind pan : stock.pans()) {
      rows.add(row(box, pan, stock.tolerance()));
    }
    return new FitCheck(box.id(), wells, rows);
  }

  /** The pans that need a look. */
  public List<WellFit> wrong() {
    return wells.stream().filter(well -> !well.isRight()).toList();
  }

  private static WellFit fit(Box box, Well well, PanKind pan, FitTolerance tolerance) {
    PanKind.Extent outer = pan.outer();
    double lengthPlay = Math.max(well.widthMm(), well.heightMm()) - outer.lengthMm();
    double widthPlay = Math.min(well.widthMm(), well.heightMm()) - outer.widthMm();
    double raised =
        box.fixtures().stream()
            .filter(part -> part.kind() == FixtureKind.MAGNET && part.isUnder(well))
            .mapToDouble(Fixture::thicknessMm)
            .max()
            .orElse(0);
    boolean largerThanBox =
        outer.lengthMm() - tolerance.makeMm() > Math.max(box.widthMm(), box.heightMm())
            || outer.widthMm() - tolerance.makeMm() > Math.min(box.widthMm(), box.heightMm());
    return new WellFit(
        well.id(),
        pan.id(),
        seat(lengthPlay, widthPlay, tolerance),
        lengthPlay,
        widthPlay,
        raised,
        box.depthMm().isPresent()
            ? OptionalDouble.of(outer.heightMm() + raised - box.depthMm().getAsDouble())
            : OptionalDouble.empty(),
        largerThanBox);
  }

  private static Seat seat(double lengthPlay, double widthPlay, FitTolerance tolerance) {
    double hair = 1e-9;
    double least = Math.min(lengthPlay, widthPlay);
    if (least < -tolerance.makeMm() - hair) {
      return Seat.NOT_IN;
    }
    if (least < -hair) {
      return Seat.TIGHT;
    }
    return Math.max(lengthPlay, widthPlay) > tolerance.looseMm() + hair ? Seat.LOOSE : Seat.FITS;
  }

  private static RowFit row(Box box, PanKind pan, FitTolerance tolerance) {
    PanKind.Extent outer = pan.outer();
    boolean uprightGoesIn = outer.lengthMm() <= box.heightMm();
    boolean turnedGoesIn = outer.widthMm() <= box.heightMm();
    return new RowFit(
        pan.id(),
        uprightGoesIn ? along(box, outer.widthMm()) : 0,
        uprightGoesIn ? along(box, outer.widthMm() - tolerance.makeMm()) : 0,
        turnedGoesIn ? along(box, outer.lengthMm()) : 0,
        turnedGoesIn ? along(box, outer.lengthMm() - tolerance.makeMm()) : 0);
  }

  private static int along(Box box, double sideMm) {
    return sideMm > 0 ? (int) Math.floor(box.widthMm() / sideMm + 1e-9) : 0;
  }
}
