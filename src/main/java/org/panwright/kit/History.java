package org.panwright.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A kit with the way it came to be: what can be undone and what can be redone.
 *
 * <p>Immutable. Snapshots share all that an edit leaves alone, so a step costs a few references.
 *
 * @param past steps done, oldest first; each with the kit before it
 * @param kit the kit now
 * @param future steps undone, next to redo first; each with the kit after it
 */
public record History(List<Step> past, Kit kit, List<Step> future) {
  /** Steps kept for undo. */
  public static final int LONGEST = 500;

  /** An edit and the kit on the far side of it. */
  public record Step(Edit edit, Kit kit) {}

  public History {
    past = List.copyOf(past);
    future = List.copyOf(future);
  }

  /** A history that starts with {@code kit}. */
  public static History startingWith(Kit kit) {
    return new History(List.of(), kit, List.of());
  }

  /** The history after {@code edit}; itself if the edit changes nothing. */
  public History perform(Edit edit) {
    Kit changed = edit.apply(kit);
    if (changed.equals(kit)) {
      return this;
    }
    List<Step> longer = new ArrayList<>(past);
    longer.add(new Step(edit, kit));
    if (longer.size() > LONGEST) {
      longer.remove(0);
    }
    return new History(longer, changed, List.of());
  }

  /** The edit {@link #undo} would take back. */
  public Optional<Edit> undoable() {
    return past.isEmpty() ? Optional.empty() : Optional.of(past.get(past.size() - 1).edit());
  }

  /** The edit {@link #redo} would do again. */
  public Optional<Edit> redoable() {
    return future.isEmpty() ? Optional.empty() : Optional.of(future.get(0).edit());
  }

  /** The history with the last step taken back; itself if there is none. */
  public History undo() {
    if (past.isEmpty()) {
      return this;
    }
    Step last = past.get(past.size() - 1);
    List<Step> undone = new ArrayList<>(future);
    undone.add(0, new Step(last.edit(), kit));
    return new History(past.subList(0, past.size() - 1), last.kit(), undone);
  }

  /** The history with the last undone step done again; itself if there is none. */
  public History redo() {
    if (future.isEmpty()) {
      return this;
    }
    Step next = future.get(0);
    List<Step> done = new ArrayList<>(past);
    done.add(new Step(next.edit(), kit));
    return new History(done, next.kit(), future.subList(1, future.size()));
  }
}
