package org.panwright.command;

import java.util.List;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.words.CommandWords;

/** Finds the lineups that commands are told by name. */
final class NamedLineup {
  private NamedLineup() {}

  /** The lineup of this name, capitals counting only where two names differ by nothing else. */
  static Lineup in(Kit kit, String name) throws BadUseException {
    List<Lineup> lineups = kit.lineups();
    if (lineups.isEmpty()) {
      throw new BadUseException(CommandWords.noLineup(kit.name()));
    }
    return lineups.stream()
        .filter(lineup -> lineup.name().equals(name))
        .findFirst()
        .or(() -> lineups.stream().filter(l -> l.name().equalsIgnoreCase(name)).findFirst())
        .orElseThrow(
            () ->
                new BadUseException(
                    CommandWords.unknownLineup(name, lineups.stream().map(Lineup::name).toList())));
  }
}
