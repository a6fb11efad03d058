package org.panwright.analysis.outing;

import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.panwright.analysis.search.FadingSearch;
import org.panwright.analysis.search.MetalsSearch;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;
import org.panwright.kit.PackingRates;
import org.panwright.kit.SheetSize;
import org.panwright.paint.PigmentLibrary;

/**
 * What an outing needs, worked out from its hours, its sheets, its subject colours and its lineup
 * at the painter's rates. The formulas and their sources are in {@code docs/numbers.md}, "What an
 * outing needs".
 *
 * @param paintMl paint in all
 * @param paints each paint of the lineup in the order of the wells; empty without a lineup
 * @param waterMl clean water to carry, a multiple of {@value #STEP_ML}
 * @param dirtyMl least size of the container that takes the rinse water home, a multiple of {@value
 *     #STEP_ML}
 * @param cups water cups in use at a time
 * @param cupFillings how often the water fills all of them
 * @param sheets sheets to paint
 * @param spareSheets sheets to spare
 * @param sheetSize their size
 * @param washBrushMm width of the largest brush
 * @param wipes paper tissues
 * @param metals the paints aboard by chemical symbol of each metal that calls for care
 * @param fading the paints aboard that fade
 */
public record PackingNeeds(
    double paintMl,
    List<PaintUse> paints,
    double waterMl,
    double dirtyMl,
    int cups,
    double cupFillings,
    int sheets,
    int spareSheets,
    SheetSize sheetSize,
    double washBrushMm,
    int wipes,
    Map<String, List<String>> metals,
    List<String> fading) {
  /** Amounts of water go by this step. */
  public static final double STEP_ML = 50;

  /** Room in the container for rinse water, beyond the water carried. */
  private static final double HEADROOM = 1.1;

  private static final double BRUSH_SHARE = 0.1;
  private static final double BRUSH_STEP_MM = 5;
  private static final double LARGEST_BRUSH_MM = 50;

  public PackingNeeds {
    paints = List.copyOf(paints);
    fading = List.copyOf(fading);
    metals = java.util.Collections.unmodifiableMap(new java.util.TreeMap<>(metals));
  }

  /**
   * The needs of one outing of a kit.
   *
   * <pre>
   * A      = sheets · area of a sheet in A5
   * paint  = A · paint for an A5 sheet
   * water  = hours · water for an hour + A · water for an A5 sheet, up to the next 50 ml
   * dirty  = 1.1 · water, up to the next 50 ml
   * spare  = sheets · spare sheets for each, up to a whole one
   * brush  = a tenth of the shorter side, to the nearest 5 mm, 5..50 mm
   * </pre>
   *
   * @param cancelled asked now and then
   * @throws java.util.concurrent.CancellationException as soon as {@code cancelled} answers true
   */
  public static PackingNeeds of(
      Kit kit, Outing outing, PigmentLibrary library, BooleanSupplier cancelled) {
    PackingRates rates = outing.rates();
    double area = outing.sheets() * outing.sheetSize().inA5();
    double paintMl = area * rates.paintMlPerA5();
    double water =
        stepsUp(outing.hours() * rates.waterMlPerHour() + area * rates.waterMlPerA5(), STEP_ML);
    double inCups = rates.cups() * rates.cupMl();
    PaintsAboard aboard = PaintsAboard.of(kit, outing, library);
    return new PackingNeeds(
        paintMl,
        aboard.uses(paintMl, cancelled),
        water,
        stepsUp(HEADROOM * water, STEP_ML),
        rates.cups(),
        inCups > 0 ? water / inCups : 0,
        outing.sheets(),
        (int) stepsUp(outing.sheets() * rates.spareSheets(), 1),
        outing.sheetSize(),
        washBrush(outing.sheetSize()),
        (int) stepsUp(outing.sheets() * rates.wipesPerSheet(), 1),
        MetalsSearch.metals(aboard.paints(), library),
        FadingSearch.fading(aboard.paints(), library));
  }

  /** The paints that give out before the outing is over. */
  public List<PaintUse> runningOut() {
    return paints.stream().filter(PaintUse::runsOut).toList();
  }

  private static double washBrush(SheetSize size) {
    double wide = Math.rint(BRUSH_SHARE * size.shorterMm() / BRUSH_STEP_MM) * BRUSH_STEP_MM;
    return Math.max(BRUSH_STEP_MM, Math.min(LARGEST_BRUSH_MM, wide));
  }

  /** Up to the next whole number of steps; a hair above one still counts as that one. */
  private static double stepsUp(double amount, double step) {
    return Math.ceil(amount / step - 1e-9) * step;
  }
}
