package org.panwright.analysis.fill;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.panwright.kit.Box;
import org.panwright.kit.FilledWell;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;

/**
 * Where one paint is: in which wells of which boxes, and in how many tubes.
 *
 * @param paintId the paint
 * @param tubes how many tubes of it there are
 * @param leftMl wet paint left in them
 * @param places the wells it is in or is planned for
 */
public record PaintPlaces(String paintId, int tubes, double leftMl, List<Place> places) {
  /**
   * One well the paint is in, or planned for.
   *
   * @param lineupIds the lineups that plan it there
   * @param filled what of it is really there
   * @param beside whether that is in a pan that lies beside the box
   * @param ageDays days since it was filled; below 0 if the day lies ahead
   */
  public record Place(
      String boxId,
      String wellId,
      List<String> lineupIds,
      Optional<FilledWell> filled,
      boolean beside,
      OptionalLong ageDays) {
    public Place {
      lineupIds = List.copyOf(lineupIds);
    }
  }

  public PaintPlaces {
    places = List.copyOf(places);
  }

  /** Every paint that is in a well, planned for one, or in a tube, in the order of the shelf. */
  public static List<PaintPlaces> of(Kit kit, LocalDate today) {
    List<PaintPlaces> all = new ArrayList<>();
    kit.shelf()
        .paints()
        .forEach(
            paint -> {
              PaintPlaces where = of(kit, paint.id(), today);
              if (where.tubes > 0 || !where.places.isEmpty()) {
                all.add(where);
              }
            });
    return List.copyOf(all);
  }

  /** Where one paint is. */
  public static PaintPlaces of(Kit kit, String paintId, LocalDate today) {
    List<Place> places = new ArrayList<>();
    for (Box box : kit.boxes()) {
      for (Well well : box.wells()) {
        List<String> planned =
            kit.lineups().stream()
                .filter(lineup -> lineup.boxId().equals(box.id()))
                .filter(lineup -> holds(lineup, well, paintId))
                .map(Lineup::id)
                .toList();
        Optional<FilledWell> inPlace =
            kit.stock().in(box.id(), well.id()).filter(f -> f.paintId().equals(paintId));
        Optional<FilledWell> aside = kit.stock().aside(box.id(), well.id(), paintId);
        Optional<FilledWell> first = inPlace.or(() -> aside);
        if (!planned.isEmpty() || first.isPresent()) {
          boolean beside = inPlace.isEmpty() && aside.isPresent();
          places.add(new Place(box.id(), well.id(), planned, first, beside, age(first, today)));
        }
        aside
            .filter(pan -> inPlace.isPresent())
            .ifPresent(
                pan ->
                    places.add(
                        new Place(box.id(), well.id(), List.of(), aside, true, age(aside, today))));
      }
    }
    return new PaintPlaces(
        paintId, kit.stock().tubesOf(paintId).size(), kit.stock().leftMl(paintId), places);
  }

  /** Whether it is in, or planned for, more than one well. */
  public boolean isDoubled() {
    return places.size() > 1;
  }

  /** Dry paint of it in all wells, in ml. */
  public double inWellsMl() {
    return places.stream().flatMap(p -> p.filled().stream()).mapToDouble(FilledWell::leftMl).sum();
  }

  private static boolean holds(Lineup lineup, Well well, String paintId) {
    return lineup.in(well.id()).map(Filling::paintId).filter(paintId::equals).isPresent();
  }

  private static OptionalLong age(Optional<FilledWell> filled, LocalDate today) {
    return filled
        .map(f -> OptionalLong.of(ChronoUnit.DAYS.between(f.filledOn(), today)))
        .orElse(OptionalLong.empty());
  }
}
