package org.panwright.app.lineup;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.panwright.app.Session;
import org.panwright.app.fx.FreshId;
import org.panwright.kit.Box;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.words.LineupWords;

/** The lineups of a kit as something to choose from, add to and take away from. */
public final class LineupModel {
  private final Session session;

  /** The lineups of what is open in {@code session}. */
  public LineupModel(Session session) {
    this.session = session;
  }

  /** A lineup as it stands in the list. */
  record Entry(String id, String label) {}

  /** All lineups in the kit's order. */
  List<Entry> entries() {
    Kit kit = session.kit();
    return kit.lineups().stream()
        .map(l -> new Entry(l.id(), LineupWords.choice(l.name(), kit.boxOf(l).name())))
        .toList();
  }

  /** The entry of the lineup looked at. */
  Optional<Entry> chosen() {
    return session
        .lineup()
        .flatMap(l -> entries().stream().filter(e -> e.id().equals(l.id())).findFirst());
  }

  /** Looks at another lineup. */
  void choose(Entry entry) {
    session.look(entry.id());
  }

  /** Adds an empty lineup for a box and looks at it. */
  void add(String name, Box box) {
    addAndLook(new Lineup(freshId(), name.strip(), box.id(), java.util.Map.of()));
  }

  /** Adds a copy of the lineup looked at and looks at the copy. */
  void duplicate() {
    session.lineup().ifPresent(l -> addAndLook(l.as(freshId(), LineupWords.copyOf(l.name()))));
  }

  /** Gives the lineup looked at another name. */
  void rename(String name) {
    session
        .lineup()
        .ifPresent(l -> session.perform(new Edit.ChangeLineup(l.withName(name.strip()))));
  }

  /** Removes the lineup looked at; undo brings it back. */
  void remove() {
    session.lineup().ifPresent(l -> session.perform(new Edit.RemoveLineup(l.id())));
  }

  private void addAndLook(Lineup lineup) {
    session.perform(new Edit.AddLineup(lineup));
    session.look(lineup.id());
  }

  private String freshId() {
    Set<String> taken =
        session.kit().lineups().stream().map(Lineup::id).collect(Collectors.toSet());
    return FreshId.of("lineup", taken);
  }
}
