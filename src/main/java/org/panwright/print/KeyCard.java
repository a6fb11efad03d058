package org.panwright.print;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.kit.Box;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.paint.PigmentLibrary;
import org.panwright.words.CardWords;

/**
 * The key card of a lineup: what sits in which well, at true size.
 *
 * @param papers the sheets to save or print
 * @param notes what the painter should know about how the card came out, in sentences; may be empty
 */
public record KeyCard(Papers papers, List<String> notes) {
  public KeyCard {
    notes = List.copyOf(notes);
  }

  /**
   * The card of one lineup.
   *
   * @param date printed on the card
   * @throws IllegalArgumentException if the kit has no such lineup, or a paint is neither measured
   *     nor made of pigments in the library
   */
  public static KeyCard of(
      Kit kit, String lineupId, PigmentLibrary library, CardOptions options, LocalDate date) {
    Lineup lineup =
        kit.lineup(lineupId)
            .orElseThrow(() -> new IllegalArgumentException("the kit has no lineup " + lineupId));
    Box box = kit.boxOf(lineup);
    SheetLayout layout = new SheetLayout(options.paper());
    List<String> notes = new ArrayList<>();
    CardContent content =
        new CardContent(
            lineup.name(),
            box,
            CardWell.of(kit, lineup, library),
            CardMix.of(kit, lineup, library),
            date,
            options.format(),
            options.fields());
    Area size = layout.clipped(options.format().area(box));
    if (options.format() == CardFormat.LID && !size.equals(CardFormat.LID.area(box))) {
      notes.add(CardWords.LARGER_THAN_PAPER);
    }
    Optional<CardFront> front = CardFront.of(content, size);
    if (front.isEmpty()) {
      notes.add(CardWords.LID_TOO_SMALL);
      size = layout.clipped(CardFormat.A6.area(box));
      front = CardFront.of(content, size);
    }
    boolean complete = front.isPresent() && front.get().complete();
    boolean listed = !complete || options.list();
    if (!complete) {
      notes.add(CardWords.CONTINUES_ON_LIST);
    }
    if (options.turned() && listed && front.isPresent()) {
      if (CardList.fits(size)) {
        List<Face> backs = new CardList(content, size).faces();
        Papers papers =
            layout.turned(lineup.name(), front.get().face(), backs, options.copies(), notes);
        Sheet first = papers.sheets().get(0);
        notes.add(CardWords.turn(first.heightMm() >= first.widthMm()));
        return new KeyCard(papers, notes);
      }
      notes.add(CardWords.BACK_TOO_SMALL);
    }
    List<Face> faces = new ArrayList<>();
    front.ifPresent(f -> faces.add(f.face()));
    if (listed) {
      faces.addAll(CardList.faces(content, size, List.copyOf(faces), layout));
    }
    List<Face> all = new ArrayList<>();
    for (int copy = 0; copy < options.copies(); copy++) {
      all.addAll(faces);
    }
    return new KeyCard(layout.papers(lineup.name(), all, notes), notes);
  }
}
