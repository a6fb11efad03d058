package org.panwright.analysis.search;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.analysis.balance.Balance;
import org.panwright.analysis.balance.Looks;
import org.panwright.analysis.balance.PaintGroups;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.mud.Dark;
import org.panwright.analysis.reach.NetWalk;
import org.panwright.analysis.reach.Ring;
import org.panwright.analysis.worth.Abilities;
import org.panwright.analysis.worth.Earning;
import org.panwright.analysis.worth.LineupFigures;
import org.panwright.analysis.worth.ShelfFigures;
import org.panwright.colour.Lab;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.MutedFinding;
import org.panwright.mixing.OpticsTable;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;

/**
 * A lineup before the judge: what every search for findings draws from; one thread.
 *
 * <p>{@link #after} makes the case of the lineup as an edit would leave it, for which no paint is
 * at hand: its findings have no cures.
 */
public final class Case {
  private final Kit kit;
  private final Lineup lineup;
  private final Seats seats;
  private final PigmentLibrary library;
  private final OpticsTable table;
  private final NetWalk walk;
  private final int[] members;
  private final LineupFigures figures;
  private final ShelfFigures shelf;
  private final Abilities abilities;
  private final List<Paint> atHand;
  private final Looks looks;
  private final PaintGroups groups;
  private final Map<String, Ring> ringsWith = new HashMap<>();
  private final Map<String, Arrival> arrivals = new HashMap<>();

  /**
   * The case of a lineup as it stands.
   *
   * @param table the optics of the whole shelf
   * @param walk over the mixes of that table
   * @param figures what was walked of the lineup
   * @param shelf what was walked of the shelf
   */
  public Case(
      Kit kit,
      Lineup lineup,
      PigmentLibrary library,
      OpticsTable table,
      NetWalk walk,
      LineupFigures figures,
      ShelfFigures shelf) {
    this.kit = kit;
    this.lineup = lineup;
    this.seats = new Seats(kit.boxOf(lineup), lineup);
    this.library = library;
    this.table = table;
    this.walk = walk;
    this.figures = figures;
    this.shelf = shelf;
    members = table.indicesOf(ids());
    abilities = new Abilities(figures.ring().toArray(), figures.darkest(), figures.earnings());
    List<String> inside = ids();
    atHand =
        kit.shelf().paints().stream()
            .filter(paint -> paint.ownership() == Ownership.OWNED && !inside.contains(paint.id()))
            .filter(paint -> shelf.standing().contains(paint.id()))
            .toList();
    looks = new Looks(table, kit.washes());
    groups = new PaintGroups(library, looks);
  }

  private Case(Case before, Kit kit, Abilities abilities) {
    this.kit = kit;
    this.abilities = abilities;
    lineup = kit.lineup(before.lineup.id()).orElseThrow();
    seats = new Seats(kit.boxOf(lineup), lineup);
    library = before.library;
    table = before.table;
    walk = before.walk;
    figures = before.figures;
    shelf = before.shelf;
    looks = before.looks;
    groups = before.groups;
    members = table.indicesOf(ids());
    atHand = List.of();
  }

  /** The case after an edit, given what the lineup then can do. */
  public Case after(Edit edit, Abilities then) {
    return new Case(this, edit.apply(kit), then);
  }

  /** The kit the lineup belongs to. */
  public Kit kit() {
    return kit;
  }

  /** The pigments paints are looked up in. */
  public PigmentLibrary library() {
    return library;
  }

  /** The optics of the whole shelf. */
  public OpticsTable table() {
    return table;
  }

  NetWalk walk() {
    return walk;
  }

  /** What was walked of the lineup as it stands; of a case after an edit, as it stood before. */
  public LineupFigures figures() {
    return figures;
  }

  ShelfFigures shelf() {
    return shelf;
  }

  /** Where the paints sit. */
  public Seats seats() {
    return seats;
  }

  /** A fresh array of the highest chroma of the lineup's ring at each of 72 steps. */
  double[] chroma() {
    return abilities.chroma();
  }

  /** The lineup's darkest dry mix, unless it is empty. */
  Optional<Dark> darkest() {
    return abilities.darkest();
  }

  /** What each of the lineup's paints earns, in the order of the wells. */
  public List<Earning> earnings() {
    return abilities.earnings();
  }

  /** The table numbers of the lineup's paints in the order of the wells; not to be changed. */
  public int[] members() {
    return members;
  }

  /** The ids of the lineup's paints in the order of the wells. */
  public List<String> ids() {
    return lineup.paintIds(seats.box());
  }

  /** The lineup's paints in the order of the wells. */
  List<Paint> paints() {
    return ids().stream().map(this::paint).toList();
  }

  /** A paint of the shelf. */
  Paint paint(String paintId) {
    return kit.shelf().find(paintId).orElseThrow();
  }

  /** The owned paints that are not in the lineup; of a very large shelf those that stand for it. */
  public List<Paint> atHand() {
    return atHand;
  }

  /** The mute of a finding for this lineup, if it is muted. */
  public Optional<MutedFinding> mute(Finding finding) {
    return lineup.mute(finding.key());
  }

  /** Whether a finding is muted for this lineup. */
  boolean isMuted(Finding finding) {
    return mute(finding).isPresent();
  }

  /** How the paints look alone. */
  public Looks looks() {
    return looks;
  }

  /** Where the paints are filed. */
  PaintGroups groups() {
    return groups;
  }

  /** How the lineup is made up. */
  public Balance balance() {
    return Balance.of(paints(), groups, looks);
  }

  /** The dry masstone coat of a paint. */
  Lab masstone(String paintId) {
    return looks.masstone(paintId);
  }

  /** The dry coat of one strength part of a paint. */
  Lab tint(String paintId) {
    return looks.tint(paintId);
  }

  /** How far two paints are from each other: mean ΔE00 of masstone and of tint. */
  public double apart(String first, String second) {
    return looks.apart(first, second);
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

  /** What the lineup can mix with one more paint, and then without each of its own. */
  public Arrival arrival(String paintId) {
    return arrivals.computeIfAbsent(paintId, id -> Arrival.of(this, id));
  }

  /** What a paint of the lineup earns, ring, reach and colours of the place together. */
  double earned(String paintId) {
    return earnings().stream()
        .filter(earning -> earning.paintId().equals(paintId))
        .mapToDouble(Earning::total)
        .findFirst()
        .orElse(0);
  }
}
