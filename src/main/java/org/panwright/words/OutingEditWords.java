package org.panwright.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.panwright.kit.CheckItem;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;

/** What a change of an outing does, told by what is different. */
final class OutingEditWords {
  private OutingEditWords() {}

  /** The words for putting {@code after} in the place of the outing of its id. */
  static String ofChange(Outing after, Kit before) {
    Optional<Outing> known = before.outing(after.id());
    if (known.isEmpty()) {
      return "change outing " + after.name();
    }
    Outing was = known.get();
    List<String> changes = new ArrayList<>();
    if (!was.name().equals(after.name())) {
      changes.add("rename outing %s to %s".formatted(was.name(), after.name()));
    }
    note(changes, was, after, "date", Outing::date);
    note(changes, was, after, "place", Outing::place);
    note(changes, was, after, "lineup", Outing::lineupId);
    note(changes, was, after, "hours", Outing::hours);
    note(changes, was, after, "sheets", Outing::sheets);
    note(changes, was, after, "sheet size", Outing::sheetSize);
    note(changes, was, after, "subject colours", Outing::subjects);
    note(changes, was, after, "rates", Outing::rates);
    if (!was.checklist().equals(after.checklist())) {
      changes.add(ofList(was, after));
    }
    return changes.size() == 1 ? changes.get(0) : "change outing " + after.name();
  }

  private static void note(
      List<String> changes, Outing was, Outing after, String what, Function<Outing, ?> part) {
    if (!part.apply(was).equals(part.apply(after))) {
      changes.add("change the %s of %s".formatted(what, after.name()));
    }
  }

  private static String ofList(Outing was, Outing after) {
    if (after.checklist().isEmpty()) {
      return "put the usual check list back";
    }
    Map<String, CheckItem> before = byId(PackingWords.checklist(was));
    Map<String, CheckItem> now = byId(PackingWords.checklist(after));
    for (CheckItem item : now.values()) {
      if (!before.containsKey(item.id())) {
        return "put %s on the check list".formatted(quoted(item));
      }
    }
    for (CheckItem item : before.values()) {
      if (!now.containsKey(item.id())) {
        return "take %s off the check list".formatted(quoted(item));
      }
    }
    List<CheckItem> different =
        now.values().stream().filter(item -> !item.equals(before.get(item.id()))).toList();
    if (different.isEmpty()) {
      return "change the order of the check list";
    }
    return different.size() > 1
        ? "change the check list"
        : ofItem(before.get(different.get(0).id()), different.get(0));
  }

  private static String ofItem(CheckItem was, CheckItem now) {
    if (was.ticked() != now.ticked()) {
      return (now.ticked() ? "tick " : "untick ") + quoted(now);
    }
    return was.text().equals(now.text())
        ? "change the note on " + quoted(now)
        : "rename %s to %s".formatted(quoted(was), quoted(now));
  }

  private static String quoted(CheckItem item) {
    return WordParts.quoted(item.text());
  }

  private static Map<String, CheckItem> byId(List<CheckItem> items) {
    return items.stream()
        .collect(
            Collectors.toMap(
                CheckItem::id, item -> item, (a, b) -> a, java.util.LinkedHashMap::new));
  }
}
