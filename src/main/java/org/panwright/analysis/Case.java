package org.panwright.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.colour.Oklch;
import org.panwright.kit.Box;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.MutedFinding;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.Wash;

/** A lineup before the judge: what every search for findings draws from; one thread. */
final class Case {
  private final Kit kit;
  private final Lineup lineup;
  private final Box box;
  private final PigmentLibrary library;
  private final OpticsTable table;
  private final NetWalk walk;
  private final int[] members;
  private final LineupFigures figures;
  private final ShelfFigures shelf;
  private final Map<String, Lab> masstones = new HashMap<>();
  private final Map<String, Lab> tints = new HashMap<>();
  private final Map<String, Oklch> bodies = new HashMap<>();
  private final Map<String, Ring> ringsWith = new HashMap<>();

  Case(
      Kit kit,
      Lineup lineup,
      PigmentLibrary library,
      OpticsTable table,
      NetWalk walk,
      LineupFigures figures,
      ShelfFigures shelf) {
    this.kit = kit;
    this.lineup = lineup;
    this.box = kit.boxOf(lineup);
    this.library = library;
    this.table = table;
    this.walk = walk;
    this.members = numbers(table, lineup.paintIds(box));
    this.figures = figures;
    this.shelf = shelf;
  }

  /** The table numbers of paints given by id. */
  static int[] numbers(OpticsTable table, List<String> ids) {
    return ids.stream().mapToInt(table::indexOf).toArray();
  }

  Kit kit() {
    return kit;
  }

  PigmentLibrary library() {
    return library;
  }

  OpticsTable table() {
    return table;
  }

  NetWalk walk() {
    return walk;
  }

  LineupFigures figures() {
    return figures;
  }

  ShelfFigures shelf() {
    return shelf;
  }

  /** The table numbers of the lineup's paints in the order of the wells; not to be changed. */
  int[] members() {
    return members;
  }

  /** The lineup's paints in the order of the wells. */
  List<Paint> paints() {
    return lineup.paintIds(box).stream().map(id -> kit.shelf().find(id).orElseThrow()).toList();
  }

  /** A paint of the shelf. */
  Paint paint(String paintId) {
    return kit.shelf().find(paintId).orElseThrow();
  }

  /** The owned paints that are not in the lineup; of a very large shelf those that stand for it. */
  List<Paint> atHand() {
    List<String> inside = lineup.paintIds(box);
    return kit.shelf().paints().stream()
        .filter(paint -> paint.ownership() == Ownership.OWNED && !inside.contains(paint.id()))
        .filter(paint -> shelf.standing().contains(paint.id()))
        .toList();
  }

  /** The mute of a finding for this lineup, if it is muted. */
  Optional<MutedFinding> mute(Finding finding) {
    return lineup.mute(finding.key());
  }

  /** Whether a finding is muted for this lineup. */
  boolean isMuted(Finding finding) {
    return mute(finding).isPresent();
  }

  /** The milk wash of a paint: what its hue is judged by. */
  Oklch body(String paintId) {
    return bodies.computeIfAbsent(
        paintId,
        id -> {
          Lab lab = new Mixer(table).lab(Recipe.of(id), kit.washes().load(Wash.MILK));
          return Oklab.ofD65(lab.toXyz(Light.D65.white())).toOklch();
        });
  }

  /** The lineup's hue ring with one more paint. */
  Ring ringWith(String paintId) {
    return ringsWith.computeIfAbsent(
        paintId,
        id -> {
          Ring.Gatherer more = new Ring.Gatherer(figures.ring());
          walk.with(table.indexOf(id), members, more);
          return more.ring();
        });
  }

  /** What a paint of the lineup earns, ring and reach together. */
  double earned(String paintId) {
    return figures.earnings().stream()
        .filter(earning -> earning.paintId().equals(paintId))
        .mapToDouble(Earning::total)
        .findFirst()
        .orElse(0);
  }

  /** How far two paints are from each other: mean ΔE00 of masstone and of tint. */
  double apart(String first, String second) {
    return (Difference.ciede2000(masstone(first), masstone(second))
            + Difference.ciede2000(tint(first), tint(second)))
        / 2;
  }

  /** The dry masstone coat of a paint. */
  Lab masstone(String paintId) {
    return masstones.computeIfAbsent(paintId, id -> new Mixer(table).lab(Recipe.of(id), 1));
  }

  /** The dry coat of one strength part of a paint. */
  Lab tint(String paintId) {
    return tints.computeIfAbsent(
        paintId, id -> new Mixer(table).lab(Recipe.of(id), table.tintLoad(table.indexOf(id))));
  }

  /** The edit that puts a paint into the first empty well, pans before dabs, if there is one. */
  Optional<Edit> placeInEmptyWell(String paintId) {
    return box.wells().stream()
        .filter(well -> lineup.in(well.id()).isEmpty())
        .min(Comparator.comparing(well -> well.kind() == WellKind.DAB))
        .map(well -> new Edit.PlacePaint(lineup.id(), well.id(), paintId));
  }

  /** The edit that puts a paint into the well of another, the last one if that has several. */
  Edit placeInWellOf(String leavingId, String paintId) {
    List<Well> wells = wellsOf(leavingId);
    return new Edit.PlacePaint(lineup.id(), wells.get(wells.size() - 1).id(), paintId);
  }

  /** The edit that empties the well of a paint, if it sits in exactly one. */
  Optional<Edit> empty(String paintId) {
    List<Well> wells = wellsOf(paintId);
    return wells.size() == 1
        ? Optional.of(new Edit.EmptyWell(lineup.id(), wells.get(0).id()))
        : Optional.empty();
  }

  /** The first paint that sits in more than one well: it can spare one at no loss. */
  Optional<String> doubled() {
    return lineup.paintIds(box).stream().filter(id -> wellsOf(id).size() > 1).findFirst();
  }

  private List<Well> wellsOf(String paintId) {
    List<Well> wells = new ArrayList<>();
    for (Well well : box.wells()) {
      if (lineup.in(well.id()).filter(f -> f.paintId().equals(paintId)).isPresent()) {
        wells.add(well);
      }
    }
    return wells;
  }
}
