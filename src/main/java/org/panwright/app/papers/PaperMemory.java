package org.panwright.app.papers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.panwright.app.settings.Remembered;
import org.panwright.print.PaperFormat;
import org.panwright.print.PaperKind;
import org.panwright.print.PaperOrder;

/**
 * What was chosen about papers, from one start to the next and for every kit: {@code
 * key-card.paper} and the like, the kinds left out of the one PDF, and whether it is in black and
 * white.
 */
public final class PaperMemory {
  private static final String GREY = "grey";
  private static final String LEFT_OUT = "leftOut";

  private final Supplier<Map<String, String>> kept;
  private final Consumer<Map<String, String>> keep;
  private final List<PaperOrder> usual;

  private PaperMemory(
      PaperFormat paper, Supplier<Map<String, String>> kept, Consumer<Map<String, String>> keep) {
    this.kept = kept;
    this.keep = keep;
    usual = PaperKind.allOn(paper);
  }

  /**
   * The memory in the settings.
   *
   * @param paper what all papers are printed on until the painter says otherwise
   */
  public static PaperMemory in(Remembered remembered, PaperFormat paper) {
    return new PaperMemory(
        paper,
        () -> remembered.settings().papers(),
        choices -> remembered.change(settings -> settings.withPapers(choices)));
  }

  /** A memory that forgets. */
  static PaperMemory none(PaperFormat paper) {
    return new PaperMemory(paper, Map::of, choices -> {});
  }

  /** The order of every kind, as it was left. */
  List<PaperOrder> orders() {
    return usual.stream().map(order -> OrderChoices.restored(order, of(order.kind()))).toList();
  }

  /** Whether a kind is among those saved together. */
  boolean isTicked(PaperKind kind) {
    String leftOut = kept.get().getOrDefault(LEFT_OUT, "");
    return !List.of(leftOut.split(" ")).contains(kind.fileName());
  }

  boolean isGrey() {
    return kept.get().getOrDefault(GREY, "").equals("true");
  }

  /** Keeps what differs from what is usual. */
  void keep(Map<PaperKind, PaperOrder> orders, Set<PaperKind> ticked, boolean grey) {
    Map<String, String> choices = new TreeMap<>();
    for (PaperOrder order : usual) {
      OrderChoices.of(orders.getOrDefault(order.kind(), order), order)
          .forEach((part, words) -> choices.put(order.kind().fileName() + "." + part, words));
    }
    if (grey) {
      choices.put(GREY, "true");
    }
    String leftOut =
        Stream.of(PaperKind.values())
            .filter(kind -> !ticked.contains(kind))
            .map(PaperKind::fileName)
            .collect(Collectors.joining(" "));
    if (!leftOut.isEmpty()) {
      choices.put(LEFT_OUT, leftOut);
    }
    keep.accept(choices);
  }

  private Map<String, String> of(PaperKind kind) {
    String start = kind.fileName() + ".";
    Map<String, String> choices = new LinkedHashMap<>();
    kept.get()
        .forEach(
            (name, words) -> {
              if (name.startsWith(start)) {
                choices.put(name.substring(start.length()), words);
              }
            });
    return choices;
  }
}
