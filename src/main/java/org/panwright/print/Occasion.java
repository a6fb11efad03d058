package org.panwright.print;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.panwright.kit.Box;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.kit.Well;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;

/**
 * What papers are made of.
 *
 * @param lineupId the lineup they are for
 * @param outing the outing they are for, if any
 * @param date printed on them
 */
public record Occasion(
    Kit kit, String lineupId, Optional<Outing> outing, PigmentLibrary library, LocalDate date) {
  public Occasion {
    Objects.requireNonNull(library, "library");
    Objects.requireNonNull(date, "date");
    LineupPaint.lineup(kit, lineupId);
  }

  /** The lineup. */
  public Lineup lineup() {
    return LineupPaint.lineup(kit, lineupId);
  }

  /** The outing's name, or the lineup's if there is no outing. */
  public String name() {
    return outing.map(Outing::name).orElse(lineup().name());
  }

  /** The paints of the lineup, each once, in the order of the wells. */
  public List<Paint> paints() {
    return LineupPaint.of(kit, lineupId).stream().map(LineupPaint::paint).toList();
  }

  /** The names on the papers that hold a letter or sign the faces have no shape for. */
  List<String> unprintable() {
    Box box = kit.boxOf(lineup());
    return Stream.of(
            Stream.of(lineup().name(), box.name()),
            outing.stream().flatMap(o -> Stream.of(o.name(), o.place())),
            box.wells().stream().map(Well::label),
            paints().stream().map(Paint::name))
        .flatMap(names -> names)
        .filter(name -> !Script.isComplete(name))
        .distinct()
        .toList();
  }
}
