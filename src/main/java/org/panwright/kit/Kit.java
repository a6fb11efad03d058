package org.panwright.kit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.panwright.paint.Paint;
import org.panwright.paint.Paper;
import org.panwright.paint.Shelf;
import org.panwright.paint.WashStrengths;

/**
 * The whole document as one immutable tree.
 *
 * <p>Checks its references: every lineup's box, every filled well and every paint in it exist,
 * every outing's lineup exists, every tube's paint and every filled well's box, well and paint
 * exist, every well's kind of pan exists, ids are unique in their list.
 */
public record Kit(
    String name,
    Shelf shelf,
    List<Box> boxes,
    List<Lineup> lineups,
    List<Outing> outings,
    Paper paper,
    WashStrengths washes,
    String note,
    Stock stock) {
  public Kit {
    boxes = List.copyOf(boxes);
    lineups = List.copyOf(lineups);
    outings = List.copyOf(outings);
    Objects.requireNonNull(shelf, "shelf");
    Objects.requireNonNull(paper, "paper");
    Objects.requireNonNull(washes, "washes");
    Objects.requireNonNull(note, "note");
    Objects.requireNonNull(stock, "stock");
    if (name.isBlank()) {
      throw new IllegalArgumentException("a kit needs a name");
    }
    requireUnique("boxes", boxes.stream().map(Box::id).toList());
    requireUnique("lineups", lineups.stream().map(Lineup::id).toList());
    requireUnique("outings", outings.stream().map(Outing::id).toList());
    for (Lineup lineup : lineups) {
      requireReferences(lineup, shelf, boxes);
    }
    Set<String> lineupIds = new HashSet<>(lineups.stream().map(Lineup::id).toList());
    for (Outing outing : outings) {
      if (outing.lineupId().isPresent() && !lineupIds.contains(outing.lineupId().get())) {
        throw new IllegalArgumentException(
            "outing " + outing.name() + " names no lineup of the kit: " + outing.lineupId().get());
      }
    }
    requireReferences(stock, shelf, boxes);
  }

  /** A kit with no stock. */
  public Kit(
      String name,
      Shelf shelf,
      List<Box> boxes,
      List<Lineup> lineups,
      List<Outing> outings,
      Paper paper,
      WashStrengths washes,
      String note) {
    this(name, shelf, boxes, lineups, outings, paper, washes, note, Stock.NONE);
  }

  /** An empty kit: nothing on the shelf, no box, plain white paper, the usual washes. */
  public static Kit empty(String name) {
    return new Kit(
        name,
        new Shelf(List.of()),
        List.of(),
        List.of(),
        List.of(),
        Paper.WHITE,
        WashStrengths.USUAL,
        "");
  }

  /** The box with this id. */
  public Optional<Box> box(String id) {
    return boxes.stream().filter(b -> b.id().equals(id)).findFirst();
  }

  /** The lineup with this id. */
  public Optional<Lineup> lineup(String id) {
    return lineups.stream().filter(l -> l.id().equals(id)).findFirst();
  }

  /** The outing with this id. */
  public Optional<Outing> outing(String id) {
    return outings.stream().filter(o -> o.id().equals(id)).findFirst();
  }

  /** The box a lineup of this kit is for. */
  public Box boxOf(Lineup lineup) {
    return box(lineup.boxId()).orElseThrow();
  }

  /** The kit under another name. */
  public Kit withName(String changed) {
    return new Kit(changed, shelf, boxes, lineups, outings, paper, washes, note, stock);
  }

  /** The kit with another shelf. */
  public Kit withShelf(Shelf changed) {
    return new Kit(name, changed, boxes, lineups, outings, paper, washes, note, stock);
  }

  /**
   * The kit with other boxes and lineups, changed together because lineups point at wells; what was
   * filled into wells that are gone goes with them.
   */
  public Kit withBoxes(List<Box> changedBoxes, List<Lineup> changedLineups) {
    Predicate<FilledWell> remains =
        filled ->
            changedBoxes.stream()
                .filter(box -> box.id().equals(filled.boxId()))
                .anyMatch(box -> box.find(filled.wellId()).isPresent());
    Stock kept = stock.keepingFilled(remains).keepingAside(remains);
    return new Kit(name, shelf, changedBoxes, changedLineups, outings, paper, washes, note, kept);
  }

  /** The kit with other lineups. */
  public Kit withLineups(List<Lineup> changed) {
    return withBoxes(boxes, changed);
  }

  /** The kit with the lineup of the same id replaced. */
  public Kit replacing(Lineup changed) {
    return withLineups(
        lineups.stream().map(l -> l.id().equals(changed.id()) ? changed : l).toList());
  }

  /** The kit with other outings. */
  public Kit withOutings(List<Outing> changed) {
    return new Kit(name, shelf, boxes, lineups, changed, paper, washes, note, stock);
  }

  /** The kit on another paper. */
  public Kit withPaper(Paper changed) {
    return new Kit(name, shelf, boxes, lineups, outings, changed, washes, note, stock);
  }

  /** The kit with other wash strengths. */
  public Kit withWashes(WashStrengths changed) {
    return new Kit(name, shelf, boxes, lineups, outings, paper, changed, note, stock);
  }

  /** The kit with other things to fill boxes with. */
  public Kit withStock(Stock changed) {
    return new Kit(name, shelf, boxes, lineups, outings, paper, washes, note, changed);
  }

  /** The kit with other kinds of pans; wells whose kind is gone take the usual one. */
  Kit withPans(List<PanKind> changed) {
    Stock restocked = stock.withPans(changed);
    List<Box> known = boxes.stream().map(box -> withKnownPans(box, restocked)).toList();
    return new Kit(name, shelf, known, lineups, outings, paper, washes, note, restocked);
  }

  private static Box withKnownPans(Box box, Stock stock) {
    return box.withWells(
        box.wells().stream()
            .map(well -> well.withPan(well.panId().filter(id -> stock.pan(id).isPresent())))
            .toList());
  }

  private static void requireUnique(String what, List<String> ids) {
    Set<String> seen = new HashSet<>();
    for (String id : ids) {
      if (!seen.add(id)) {
        throw new IllegalArgumentException("two " + what + " have the id " + id);
      }
    }
  }

  private static void requireReferences(Lineup lineup, Shelf shelf, List<Box> boxes) {
    Box box =
        boxes.stream()
            .filter(b -> b.id().equals(lineup.boxId()))
            .findFirst()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "lineup " + lineup.name() + " names no box of the kit: " + lineup.boxId()));
    lineup
        .fillings()
        .forEach(
            (wellId, filling) -> {
              if (box.find(wellId).isEmpty()) {
                throw new IllegalArgumentException(
                    "lineup " + lineup.name() + " fills a well that box lacks: " + wellId);
              }
              if (shelf.find(filling.paintId()).isEmpty()) {
                throw new IllegalArgumentException(
                    "lineup "
                        + lineup.name()
                        + " holds a paint not on the shelf: "
                        + filling.paintId());
              }
            });
  }

  private static void requireReferences(Stock stock, Shelf shelf, List<Box> boxes) {
    Set<String> paints = new HashSet<>(shelf.paints().stream().map(Paint::id).toList());
    for (Tube tube : stock.tubes()) {
      if (!paints.contains(tube.paintId())) {
        throw new IllegalArgumentException(
            "tube " + tube.id() + " holds a paint not on the shelf: " + tube.paintId());
      }
    }
    List<FilledWell> everyPan = new ArrayList<>(stock.filled());
    everyPan.addAll(stock.aside());
    for (FilledWell filled : everyPan) {
      boolean known =
          paints.contains(filled.paintId())
              && boxes.stream()
                  .filter(box -> box.id().equals(filled.boxId()))
                  .anyMatch(box -> box.find(filled.wellId()).isPresent());
      if (!known) {
        throw new IllegalArgumentException("nothing in the kit can be filled so: " + filled);
      }
    }
    for (Box box : boxes) {
      for (Well well : box.wells()) {
        if (well.panId().isPresent() && stock.pan(well.panId().get()).isEmpty()) {
          throw new IllegalArgumentException(
              "well %s of %s names no kind of pan: %s"
                  .formatted(well.label(), box.name(), well.panId().get()));
        }
      }
    }
  }
}
