package org.panwright.app.paint;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.fx.Action;
import org.panwright.kit.Filling;
import org.panwright.words.PaintEditorWords;

/** The menu of the shelf: what can be done with the paint picked there or in a well. */
public final class PaintActions {
  private final Session session;
  private final PaintEditor editor;

  public PaintActions(Session session, PaintEditor editor) {
    this.session = session;
    this.editor = editor;
  }

  /** Add, change, copy, remove. */
  public List<Action> all() {
    ObservableValue<Boolean> some =
        Bindings.createObjectBinding(
            () -> picked().isPresent(), session.selectionProperty(), session.historyProperty());
    return List.of(
        Action.of(PaintEditorWords.ADD_MENU, editor::add).on("Shortcut+P"),
        Action.of(PaintEditorWords.CHANGE_MENU, () -> onPicked(editor::edit))
            .on("Shortcut+E")
            .when(some),
        Action.of(PaintEditorWords.COPY_MENU, () -> onPicked(editor::duplicate))
            .on("Shortcut+D")
            .when(some),
        Action.of(PaintEditorWords.REMOVE_MENU, () -> onPicked(editor::remove)).when(some));
  }

  private void onPicked(Consumer<String> work) {
    picked().ifPresent(work);
  }

  private Optional<String> picked() {
    Selection selection = session.selectionProperty().get();
    if (selection instanceof Selection.OfPaint paint) {
      return Optional.of(paint.paintId());
    }
    if (selection instanceof Selection.OfWell well) {
      return session.lineup().flatMap(l -> l.in(well.wellId())).map(Filling::paintId);
    }
    return Optional.empty();
  }
}
