package org.panwright.app.outing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.panwright.app.fx.FreshId;
import org.panwright.kit.CheckItem;
import org.panwright.words.PackingWords;

/**
 * What the painter does to the check list of the outing looked at. The first change makes the usual
 * list the painter's own.
 */
final class CheckListModel {
  private final OutingModel outings;

  CheckListModel(OutingModel outings) {
    this.outings = outings;
  }

  /** The list as it stands; empty without an outing. */
  List<CheckItem> items() {
    return outings.chosenProperty().get().map(PackingWords::checklist).orElse(List.of());
  }

  /** Whether the list is still the usual one. */
  boolean isUsual() {
    return outings.chosenProperty().get().flatMap(outing -> outing.checklist()).isEmpty();
  }

  void tick(String id, boolean ticked) {
    replace(id, item -> item.withTicked(ticked));
  }

  /** Renames an entry; a blank name is none. */
  void rename(String id, String text) {
    if (!text.isBlank()) {
      replace(id, item -> item.withText(text.strip()));
    }
  }

  void note(String id, String note) {
    replace(id, item -> item.withNote(note.strip()));
  }

  /** Puts something at the end of the list; nothing if {@code text} is blank. */
  void add(String text) {
    if (!text.isBlank()) {
      Set<String> taken = items().stream().map(CheckItem::id).collect(Collectors.toSet());
      CheckItem item =
          new CheckItem(FreshId.of("item", taken), text.strip(), "", false, Optional.empty());
      change(list -> list.add(item));
    }
  }

  void remove(String id) {
    change(list -> list.removeIf(item -> item.id().equals(id)));
  }

  /** Moves an entry up (−1) or down (1); at an end of the list nothing happens. */
  void move(String id, int by) {
    change(
        list -> {
          int from = indexOf(list, id);
          int to = from + by;
          if (from >= 0 && to >= 0 && to < list.size()) {
            Collections.swap(list, from, to);
          }
        });
  }

  /** Puts the usual list back. */
  void usual() {
    outings.change(outing -> outing.withChecklist(Optional.empty()));
  }

  private static int indexOf(List<CheckItem> list, String id) {
    for (int i = 0; i < list.size(); i++) {
      if (list.get(i).id().equals(id)) {
        return i;
      }
    }
    return -1;
  }

  private void replace(String id, UnaryOperator<CheckItem> change) {
    change(list -> list.replaceAll(item -> item.id().equals(id) ? change.apply(item) : item));
  }

  private void change(Consumer<List<CheckItem>> change) {
    List<CheckItem> changed = new ArrayList<>(items());
    change.accept(changed);
    if (!changed.equals(items())) {
      outings.change(outing -> outing.withChecklist(Optional.of(changed)));
    }
  }
}
