package org.panwright.app.paint;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.beans.value.ObservableValue;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.chip.Tones;
import org.panwright.app.dialogs.Choice;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.Form;
import org.panwright.app.fx.FreshId;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.Pigment;
import org.panwright.paint.PigmentShare;
import org.panwright.words.PaintEditorWords;

/** Adds, changes, copies and removes paints of the shelf, asking the painter what for. */
public final class PaintEditor {
  private final Session session;
  private final ToneBook tones;
  private final Dialogs dialogs;

  public PaintEditor(Session session, ToneBook tones, Dialogs dialogs) {
    this.session = session;
    this.tones = tones;
    this.dialogs = dialogs;
  }

  /** Opens on a new paint. */
  public void add() {
    PaintEditorModel model = PaintEditorModel.ofNew(tones.library(), freshId());
    PaintEditorView view = view(model);
    Runnable andAnother =
        () -> {
          Paint paint = model.paintProperty().getValue().orElseThrow();
          put(paint);
          model.startAnew(freshId(), paint.name());
          view.firstField().requestFocus();
        };
    dialogs
        .fillIn(
            form(
                PaintEditorWords.NEW_TITLE,
                PaintEditorWords.ADD,
                model,
                view,
                Optional.of(new Form.Further(PaintEditorWords.ADD_ANOTHER, andAnother))))
        .ifPresent(this::put);
  }

  /** Opens on a paint of the shelf. */
  public void edit(String paintId) {
    session
        .kit()
        .shelf()
        .find(paintId)
        .map(paint -> PaintEditorModel.of(tones.library(), paint, paintId))
        .flatMap(model -> ask(PaintEditorWords.CHANGE_TITLE, PaintEditorWords.CHANGE, model))
        .ifPresent(changed -> session.perform(new Edit.ChangePaint(changed)));
  }

  /** Opens on a copy of a paint of the shelf. */
  public void duplicate(String paintId) {
    session
        .kit()
        .shelf()
        .find(paintId)
        .map(paint -> paint.withName(PaintEditorWords.copyOf(paint.name())))
        .map(copy -> PaintEditorModel.of(tones.library(), copy, freshId()))
        .flatMap(model -> ask(PaintEditorWords.COPY_TITLE, PaintEditorWords.ADD, model))
        .ifPresent(this::put);
  }

  /** Removes a paint, asking first if wells would be emptied. */
  public void remove(String paintId) {
    Kit kit = session.kit();
    Optional<Paint> paint = kit.shelf().find(paintId);
    if (paint.isEmpty()) {
      return;
    }
    long wells =
        kit.lineups().stream()
            .flatMap(lineup -> lineup.fillings().values().stream())
            .filter(filling -> filling.paintId().equals(paintId))
            .count();
    boolean sure =
        wells == 0
            || dialogs.ask(
                PaintEditorWords.REMOVE_TITLE,
                PaintEditorWords.removeSentence(paint.get().name(), (int) wells),
                List.of(
                    Choice.usual(PaintEditorWords.REMOVE, true),
                    Choice.leave(PaintEditorWords.KEEP, false)));
    if (sure) {
      session.selectionProperty().set(Selection.NOTHING);
      session.perform(new Edit.RemovePaint(paintId));
    }
  }

  private void put(Paint paint) {
    session.perform(new Edit.AddPaint(paint));
    session.selectionProperty().set(new Selection.OfPaint(paint.id()));
  }

  private Optional<Paint> ask(String title, String accept, PaintEditorModel model) {
    return dialogs.fillIn(form(title, accept, model, view(model), Optional.empty()));
  }

  private PaintEditorView view(PaintEditorModel model) {
    Kit kit = session.kit();
    ObservableValue<Optional<Tones>> looks =
        model
            .lookProperty()
            .map(look -> look.map(paint -> tones.of(paint, kit.paper(), kit.washes())));
    return new PaintEditorView(model, looks, pigment -> alone(pigment, kit));
  }

  private static Form<Paint> form(
      String title,
      String accept,
      PaintEditorModel model,
      PaintEditorView view,
      Optional<Form.Further> further) {
    return new Form<>(
        title,
        view,
        accept,
        model.paintProperty().map(Optional::isPresent),
        () -> model.paintProperty().getValue().orElseThrow(),
        view.firstField(),
        further);
  }

  private Tones alone(Pigment pigment, Kit kit) {
    Paint paint =
        new Paint(
            "alone",
            pigment.commonName(),
            "",
            List.of(new PigmentShare(pigment.name(), 1)),
            pigment.handling(),
            Ownership.TRIED,
            Optional.empty(),
            "");
    return tones.of(paint, kit.paper(), kit.washes());
  }

  private String freshId() {
    Set<String> taken =
        session.kit().shelf().paints().stream().map(Paint::id).collect(Collectors.toSet());
    return FreshId.of("paint", taken);
  }
}
