package org.panwright.swatch.grid;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.panwright.paint.Admixture;
import org.panwright.paint.CoatReading;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.Wash;

/** Cells of a chart as coats of their first paints. */
public final class GridCoats {
  private GridCoats() {}

  /**
   * The coats by paint. A coat's id is made from its paints, so that the same chart read again
   * takes the place of the first reading.
   *
   * @param cells those to learn from; colours the picture cannot hold are left out
   */
  public static Map<String, List<PaintedCoat>> of(
      List<JudgedCell> cells, GridShape shape, LocalDate day, String source) {
    Map<String, List<PaintedCoat>> coats = new LinkedHashMap<>();
    for (JudgedCell judged : cells) {
      if (!judged.cell().patch().isBeyondPicture()) {
        coats
            .computeIfAbsent(judged.cell().content().first(), unused -> new ArrayList<>())
            .add(coat(judged, shape).withOrigin(day, source));
      }
    }
    return coats;
  }

  private static PaintedCoat coat(JudgedCell judged, GridShape shape) {
    CellContent content = judged.cell().content();
    String id =
        "grid-%s-%s"
            .formatted(
                shape.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                content.second().orElse("alone"));
    boolean thin = content.wash() != Wash.BUTTER && content.wash() != Wash.CREAM;
    return new PaintedCoat(
        id,
        new CoatReading.OfColour(judged.cell().patch().lab()),
        Optional.empty(),
        OptionalDouble.of(judged.load()),
        thin ? PaintedCoat.Strength.WASH : PaintedCoat.Strength.FULL,
        PaintedCoat.Ground.PAPER,
        Optional.empty(),
        content.second().map(second -> Admixture.of(second, judged.secondShare())),
        Optional.empty(),
        "",
        "");
  }
}
