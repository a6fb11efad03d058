package org.panwright.kit;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.panwright.paint.Paper;
import org.panwright.paint.Shelf;
import org.panwright.paint.WashStrengths;

/**
 * The whole document as one immutable tree.
 *
 * <p>Checks its references: every lineup's box, every filled well and every paint in it exist,
 * every outing's lineup exists, ids are unique in their list.
 */
public record Kit(
    String name,
    Shelf shelf,
    List<Box> boxes,
    List<Lineup> lineups,
    List<Outing> outings,
    Paper paper,
    WashStrengths washes,
    String note) {
  public Kit {
    boxes = List.copyOf(boxes);
    lineups = List.copyOf(lineups);
    outings = List.copyOf(outings);
    Objects.requireNonNull(shelf, "shelf");
    Objects.requireNonNull(paper, "paper");
    Objects.requireNonNull(washes, "washes");
    Objects.requireNonNull(note, "note");
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
    return new Kit(changed, shelf, boxes, lineups, outings, paper, washes, note);
  }

  /** The kit with another shelf. */
  public Kit withShelf(Shelf changed) {
    return new Kit(name, changed, boxes, lineups, outings, paper, washes, note);
  }

  /** The kit with other boxes and lineups, changed together because lineups point at wells. */
  public Kit withBoxes(List<Box> changedBoxes, List<Lineup> changedLineups) {
    return new Kit(name, shelf, changedBoxes, changedLineups, outings, paper, washes, note);
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
    return new Kit(name, shelf, boxes, lineups, changed, paper, washes, note);
  }

  /** The kit on another paper. */
  public Kit withPaper(Paper changed) {
    return new Kit(name, shelf, boxes, lineups, outings, changed, washes, note);
  }

  /** The kit with other wash strengths. */
  public Kit withWashes(WashStrengths changed) {
    return new Kit(name, shelf, boxes, lineups, outings, paper, changed, note);
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
}
