package org.panwright.print;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.panwright.analysis.outing.PackingNeeds;
import org.panwright.kit.CheckItem;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;
import org.panwright.words.CardWords;
import org.panwright.words.FillWords;
import org.panwright.words.PackingWords;
import org.panwright.words.PaperWords;

/**
 * What the painter chooses about a packing list: what to take, each with a box to tick; amounts;
 * how long the paint lasts; cautions.
 *
 * @param paper what it is printed on
 */
public record PackingOptions(PaperFormat paper) implements PaperOrder {
  /** On A4. */
  public static final PackingOptions USUAL = new PackingOptions(PaperFormat.A4);

  public PackingOptions {
    Objects.requireNonNull(paper, "paper");
  }

  @Override
  public PaperKind kind() {
    return PaperKind.PACKING_LIST;
  }

  @Override
  public PackingOptions withPaper(PaperFormat changed) {
    return new PackingOptions(changed);
  }

  @Override
  public Made make(Occasion occasion) {
    Optional<Outing> chosen = occasion.outing().or(() -> firstWith(occasion));
    if (chosen.isEmpty()) {
      return Made.nothing(PaperWords.NO_OUTING);
    }
    Kit kit = occasion.kit();
    Outing outing = chosen.get();
    PackingNeeds needs = PackingNeeds.of(kit, outing, occasion.library(), () -> false);
    ListPaper list = new ListPaper(paper);
    String where =
        Stream.of(outing.place(), outing.date().map(CardWords::date).orElse(""))
            .filter(part -> !part.isBlank())
            .collect(Collectors.joining(" · "));
    if (!where.isEmpty()) {
      list.sentence(where);
    }
    list.heading(PackingWords.CHECK_LIST);
    for (CheckItem item : PackingWords.checklist(outing)) {
      String text =
          Stream.of(item.text(), PackingWords.amount(item, needs, kit), item.note())
              .filter(part -> !part.isBlank())
              .collect(Collectors.joining(": "));
      list.line(1, item.ticked(), text);
    }
    list.heading(PackingWords.NEEDS);
    PackingWords.lines(needs)
        .forEach(line -> list.line(0, false, line.name() + ": " + line.amount()));
    list.sentence(PackingWords.BASIS);
    if (!needs.paints().isEmpty()) {
      list.heading(PaperWords.PAINT_LASTS);
      needs
          .paints()
          .forEach(
              use ->
                  list.line(
                      0,
                      false,
                      FillWords.paint(use.paintId(), kit) + ": " + PackingWords.lasting(use)));
    }
    List<String> cautions = PackingWords.cautions(needs, kit);
    if (!cautions.isEmpty()) {
      list.heading(PackingWords.CAUTIONS);
      cautions.forEach(list::sentence);
    }
    return Made.of(list.papers(PaperWords.title(kind().name(), outing.name()), List.of()));
  }

  private static Optional<Outing> firstWith(Occasion occasion) {
    return occasion.kit().outings().stream()
        .filter(outing -> outing.lineupId().equals(Optional.of(occasion.lineupId())))
        .findFirst();
  }
}
