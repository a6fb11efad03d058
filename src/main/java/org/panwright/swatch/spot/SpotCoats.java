package org.panwright.swatch.spot;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.panwright.paint.Admixture;
import org.panwright.paint.CoatReading;
import org.panwright.paint.PaintedCoat;
import org.panwright.swatch.sheet.PatchReading;

/**
 * Spots as coats of the painter's paints.
 *
 * <p>A coat's id names the picture, the kind and a number, so spots placed anew on the same picture
 * take the place of the former ones. A colour the picture cannot hold is left out where the paint
 * has another coat of its own.
 *
 * @param whiteId the white of the tints; empty for any opaque white
 * @param blackId the black of the tones; empty for any black
 */
public record SpotCoats(SpotsReading reading, Optional<String> whiteId, Optional<String> blackId) {

  /**
   * The coats by paint.
   *
   * @param source the picture, as it is noted with them
   */
  public Map<String, List<PaintedCoat>> of(LocalDate day, String source) {
    List<Optional<String>> ids = ids(source);
    Map<String, List<PaintedCoat>> coats = new LinkedHashMap<>();
    for (int i = 0; i < ids.size(); i++) {
      if (ids.get(i).isPresent()) {
        Spot spot = reading.spots().get(i);
        PaintedCoat coat =
            coat(ids.get(i).get(), spot, reading.patches().get(i).orElseThrow())
                .withOrigin(day, source);
        coats.computeIfAbsent(spot.paintId().orElseThrow(), unused -> new ArrayList<>()).add(coat);
      }
    }
    return coats;
  }

  /** The id of each spot's coat, in the order of the spots; empty where it makes none. */
  public List<Optional<String>> ids(String source) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    List<Optional<String>> ids = new ArrayList<>();
    for (int i = 0; i < reading.spots().size(); i++) {
      if (isUsed(i)) {
        Spot spot = reading.spots().get(i);
        String kind = spot.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
        int number = counts.merge(spot.paintId().orElseThrow() + "/" + kind, 1, Integer::sum);
        ids.add(Optional.of("spot-%08x-%s-%d".formatted(source.hashCode(), kind, number)));
      } else {
        ids.add(Optional.empty());
      }
    }
    return ids;
  }

  private boolean isUsed(int place) {
    Spot spot = reading.spots().get(place);
    Optional<PatchReading> patch = reading.patches().get(place);
    if (!spot.kind().isCoat() || spot.paintId().isEmpty() || patch.isEmpty() || isOfItself(spot)) {
      return false;
    }
    return !patch.get().isBeyondPicture()
        || (spot.kind().isAlone() && !isKnownOtherwise(spot.paintId().get()));
  }

  private boolean isOfItself(Spot spot) {
    return (spot.kind() == SpotKind.WITH_WHITE && spot.paintId().equals(whiteId))
        || (spot.kind() == SpotKind.WITH_BLACK && spot.paintId().equals(blackId));
  }

  /** Whether the picture holds the colour of some coat of the paint alone. */
  private boolean isKnownOtherwise(String paint) {
    for (int i = 0; i < reading.spots().size(); i++) {
      Spot spot = reading.spots().get(i);
      boolean ofIt = spot.kind().isAlone() && spot.paintId().filter(paint::equals).isPresent();
      if (ofIt && reading.patches().get(i).filter(p -> !p.isBeyondPicture()).isPresent()) {
        return true;
      }
    }
    return false;
  }

  private PaintedCoat coat(String id, Spot spot, PatchReading patch) {
    PaintedCoat coat =
        PaintedCoat.of(
            id,
            new CoatReading.OfColour(patch.lab()),
            spot.kind() == SpotKind.WASH ? PaintedCoat.Strength.WASH : PaintedCoat.Strength.FULL);
    if (spot.kind() == SpotKind.OVER_LINE) {
      return coat.withGround(PaintedCoat.Ground.BLACK_LINE, lineNear(spot));
    }
    if (reading.measuredPaper()) {
      coat =
          coat.withGround(
              PaintedCoat.Ground.PAPER, Optional.of(new CoatReading.OfColour(reading.paper())));
    }
    return switch (spot.kind()) {
      case WITH_WHITE ->
          coat.withMixedWith(
              whiteId.map(white -> Admixture.of(white, 0.5)).orElseGet(Admixture::white));
      case WITH_BLACK ->
          coat.withMixedWith(
              blackId.map(black -> Admixture.of(black, 0.5)).orElseGet(Admixture::black));
      default -> coat;
    };
  }

  /** The bare line nearest to a coat over it; empty if none was pointed at. */
  private Optional<CoatReading> lineNear(Spot coat) {
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < reading.spots().size(); i++) {
      if (reading.spots().get(i).kind() == SpotKind.BARE_LINE
          && reading.patches().get(i).isPresent()) {
        places.add(i);
      }
    }
    return places.stream()
        .min(
            Comparator.comparingDouble(
                i -> reading.spots().get(i).middle().distance(coat.middle())))
        .map(i -> new CoatReading.OfColour(reading.patches().get(i).orElseThrow().lab()));
  }
}
