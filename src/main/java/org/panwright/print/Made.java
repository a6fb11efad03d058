package org.panwright.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.words.PaperWords;

/**
 * What became of an order.
 *
 * @param papers the sheets; empty if there is nothing to print, which a note then explains
 * @param notes what the painter should know about how they came out, in sentences; may be empty
 */
public record Made(Optional<Papers> papers, List<String> notes) {
  public Made {
    notes = List.copyOf(notes);
    if (papers.isEmpty() && notes.isEmpty()) {
      throw new IllegalArgumentException("where nothing is printed a note says why");
    }
  }

  /** Papers that came out as ordered. */
  public static Made of(Papers papers) {
    return new Made(Optional.of(papers), List.of());
  }

  /** No papers, and why. */
  public static Made nothing(String why) {
    return new Made(Optional.empty(), List.of(why));
  }

  /** Makes an order, and says so if a letter could not be printed. Any thread. */
  public static Made of(PaperOrder order, Occasion occasion) {
    Made made = order.make(occasion);
    if (made.papers.isEmpty() || !made.papers.get().holdsPlaceholder()) {
      return made;
    }
    List<String> notes = new ArrayList<>(made.notes);
    notes.add(PaperWords.unprintable(occasion.unprintable()));
    return new Made(made.papers, notes);
  }
}
