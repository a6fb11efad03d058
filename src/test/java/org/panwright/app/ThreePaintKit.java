package org.panwright.app;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.colour.Spectrum;
import org.panwright.kit.Box;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.paint.Granulation;
import org.panwright.paint.Handling;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.Paper;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Shelf;
import org.panwright.paint.Staining;
import org.panwright.paint.Transparency;
import org.panwright.paint.WashStrengths;

/**
 * A kit for tests of the window: a yellow and a blue in a box of three wells, a red beside it on
 * the shelf.
 *
 * <p>The optics are invented: each paint takes away one third of the spectrum.
 */
public final class ThreePaintKit {
  public static final String LINEUP = "lineup";

  private ThreePaintKit() {}

  /** The kit. */
  public static Kit kit() {
    Box box =
        new Box(
            "box",
            "small box",
            60,
            20,
            60,
            20,
            List.of(well("w1", 0), well("w2", 20), well("w3", 40)));
    Lineup lineup =
        new Lineup(
            LINEUP,
            "two paints",
            "box",
            Map.of("w1", new Filling("yellow", Fill.FULL), "w2", new Filling("blue", Fill.FULL)));
    return new Kit(
        "test kit",
        new Shelf(
            List.of(
                paint("yellow", "PY154", 380, 490),
                paint("blue", "PB15:3", 590, 730),
                paint("red", "PR254", 380, 580))),
        List.of(box),
        List.of(lineup),
        List.of(),
        Paper.WHITE,
        WashStrengths.USUAL,
        "");
  }

  /** A paint that absorbs between two wavelengths. */
  public static Paint paint(String name, String code, double fromNm, double toNm) {
    return new Paint(
        name,
        name,
        "",
        List.of(new PigmentShare(PigmentName.of(code), 1)),
        new Handling(Transparency.TRANSPARENT, Staining.LOW, Granulation.NONE, Lightfastness.I),
        Ownership.OWNED,
        Optional.of(
            new Optics(
                Spectrum.ofWavelengths(nm -> nm >= fromNm && nm <= toNm ? 8 : 0.02),
                Spectrum.flat(0.05),
                OpticsSource.SPECTRA,
                2)),
        "");
  }

  private static Well well(String id, double xMm) {
    return new Well(id, id.substring(1), WellKind.HALF_PAN, xMm, 2, 19, 16);
  }
}
