package org.panwright.swatch.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.panwright.colour.Difference;
import org.panwright.paint.Admixture;
import org.panwright.paint.CoatReading;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.Shelf;

/**
 * The rows of a read sheet as coats of the painter's paints.
 *
 * <p>A coat's id names its sheet and patch, so the same sheet read again takes the place of the
 * first reading and another sheet adds to it. Left out are patches that were not painted, and
 * colours the picture cannot hold where the paint has another coat of its own.
 *
 * @param reading the page
 * @param paintIds by row: which paint it holds; rows missing here are left out
 * @param whiteId the white of the tints; empty for any opaque white
 * @param blackId the black of the tones; empty for any black
 * @param measuredPaper whether the paper's colour was found by a card and is to be kept with the
 *     coats
 */
public record SheetCoats(
    SheetReading reading,
    Map<Integer, String> paintIds,
    Optional<String> whiteId,
    Optional<String> blackId,
    boolean measuredPaper) {
  private static final double BARE = 2;
  private static final double BARE_ON_LINE = 2.5;

  public SheetCoats {
    paintIds = Map.copyOf(paintIds);
  }

  /** The dry coats by paint. */
  public Map<String, List<PaintedCoat>> dry(LocalDate day, String source) {
    Map<String, List<PaintedCoat>> coats = new LinkedHashMap<>();
    for (RowReading row : reading.rows()) {
      String paint = paintIds.get(row.row());
      if (paint != null) {
        List<PaintedCoat> ofRow =
            coats(row, paint).stream().map(coat -> coat.withOrigin(day, source)).toList();
        if (!ofRow.isEmpty()) {
          coats.computeIfAbsent(paint, unused -> new ArrayList<>()).addAll(ofRow);
        }
      }
    }
    return coats;
  }

  /**
   * The coats of a shelf that were read dry off this sheet before, with what this reading of the
   * wet sheet adds; empty if none were.
   */
  public Map<String, List<PaintedCoat>> wet(Shelf shelf) {
    Map<String, List<PaintedCoat>> coats = new LinkedHashMap<>();
    for (RowReading row : reading.rows()) {
      String paint = paintIds.get(row.row());
      if (paint != null) {
        List<PaintedCoat> known = new ArrayList<>();
        for (PaintedCoat wet : coats(row, paint)) {
          shelf
              .find(paint)
              .flatMap(p -> p.swatchbook().find(wet.id()))
              .map(dry -> dry.withWet(wet.dry()))
              .ifPresent(known::add);
        }
        if (!known.isEmpty()) {
          coats.put(paint, known);
        }
      }
    }
    return coats;
  }

  /** The id of a patch's coat. */
  public String id(PatchKind kind, boolean onLine) {
    int sheet = reading.sheet().code().map(PageCode::sheet).orElse(0);
    return "sheet-%04x-%s%s"
        .formatted(sheet, kind.name().toLowerCase(Locale.ROOT), onLine ? "-on-line" : "");
  }

  private List<PaintedCoat> coats(RowReading row, String paint) {
    boolean aloneKnown =
        List.of(PatchKind.FULL, PatchKind.WASH).stream()
            .map(row.onPaper()::get)
            .anyMatch(patch -> patch != null && isPainted(patch) && !patch.isBeyondPicture());
    List<PaintedCoat> coats = new ArrayList<>();
    for (PatchKind kind : PatchKind.values()) {
      PatchReading patch = row.onPaper().get(kind);
      boolean known = patch != null && isPainted(patch) && !isOfItself(kind, paint);
      if (known && (!patch.isBeyondPicture() || (isAlone(kind) && !aloneKnown))) {
        coats.add(coat(kind, patch));
      }
    }
    onLine(row).ifPresent(coats::add);
    return coats;
  }

  private boolean isPainted(PatchReading patch) {
    return Difference.ciede2000(patch.lab(), reading.paper()) >= BARE;
  }

  private static boolean isAlone(PatchKind kind) {
    return kind == PatchKind.FULL || kind == PatchKind.WASH;
  }

  private boolean isOfItself(PatchKind kind, String paint) {
    return (kind == PatchKind.TINT && whiteId.filter(paint::equals).isPresent())
        || (kind == PatchKind.TONE && blackId.filter(paint::equals).isPresent());
  }

  private PaintedCoat coat(PatchKind kind, PatchReading patch) {
    PaintedCoat coat =
        PaintedCoat.of(
            id(kind, false),
            new CoatReading.OfColour(patch.lab()),
            kind == PatchKind.WASH ? PaintedCoat.Strength.WASH : PaintedCoat.Strength.FULL);
    if (measuredPaper) {
      coat =
          coat.withGround(
              PaintedCoat.Ground.PAPER, Optional.of(new CoatReading.OfColour(reading.paper())));
    }
    return switch (kind) {
      case TINT ->
          coat.withMixedWith(
              whiteId.map(white -> Admixture.of(white, 0.5)).orElseGet(Admixture::white));
      case TONE ->
          coat.withMixedWith(
              blackId.map(black -> Admixture.of(black, 0.5)).orElseGet(Admixture::black));
      default -> coat;
    };
  }

  /** The full coat over the line, where it covers any of it; it tells how opaque the paint is. */
  private Optional<PaintedCoat> onLine(RowReading row) {
    PatchReading patch = row.onLine().get(PatchKind.FULL);
    PatchReading paper = row.onPaper().get(PatchKind.FULL);
    if (patch == null || paper == null || row.line().isEmpty() || patch.isBeyondPicture()) {
      return Optional.empty();
    }
    boolean covers = Difference.ciede2000(patch.lab(), row.line().get().lab()) >= BARE_ON_LINE;
    if (!covers && !isPainted(paper)) {
      return Optional.empty();
    }
    return Optional.of(
        new PaintedCoat(
            id(PatchKind.FULL, true),
            new CoatReading.OfColour(patch.lab()),
            Optional.empty(),
            OptionalDouble.empty(),
            PaintedCoat.Strength.FULL,
            PaintedCoat.Ground.BLACK_LINE,
            Optional.of(new CoatReading.OfColour(row.line().get().lab())),
            Optional.empty(),
            Optional.empty(),
            "",
            ""));
  }
}
