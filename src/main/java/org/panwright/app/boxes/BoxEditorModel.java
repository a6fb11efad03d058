package org.panwright.app.boxes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import org.panwright.kit.Box;
import org.panwright.kit.BoxPlan;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.paint.Paint;
import org.panwright.words.BoxEditorWords;

/** A box while it is being edited, the well picked, and what the changes would do to lineups. */
final class BoxEditorModel {
  private static final double NEW_WELL_WIDTH_MM = 16;
  private static final double NEW_WELL_HEIGHT_MM = 19;

  private final Kit kit;
  private final ReadOnlyObjectWrapper<BoxDraft> draft;
  private final ObjectProperty<Optional<String>> picked =
      new SimpleObjectProperty<>(Optional.empty());

  BoxEditorModel(Kit kit, BoxDraft start) {
    this.kit = kit;
    draft = new ReadOnlyObjectWrapper<>(start);
  }

  ReadOnlyObjectProperty<BoxDraft> draftProperty() {
    return draft.getReadOnlyProperty();
  }

  BoxDraft draft() {
    return draft.get();
  }

  /** The id of the well picked. */
  ObjectProperty<Optional<String>> pickedProperty() {
    return picked;
  }

  Optional<WellDraft> pickedWell() {
    return picked.get().flatMap(draft()::find);
  }

  /** Changes the draft. */
  void change(UnaryOperator<BoxDraft> change) {
    draft.set(change.apply(draft()));
  }

  /** Changes the well picked, if there is one. */
  void changePicked(UnaryOperator<WellDraft> change) {
    picked.get().ifPresent(id -> change(d -> d.changing(id, change)));
  }

  /** Takes sizes and wells of a ready-made box; name and id stay. */
  void startFrom(Box plan) {
    picked.set(Optional.empty());
    BoxDraft planned = BoxDraft.of(plan);
    change(
        d ->
            d.sized(plan.widthMm(), plan.heightMm())
                .withLid(plan.lidWidthMm(), plan.lidHeightMm())
                .withWells(planned.wells()));
  }

  /**
   * Lays the box out anew in rows and columns of one kind of pan; name and id stay.
   *
   * @param dabs dab places in the channel
   */
  void layOut(WellKind kind, int rows, int columns, int dabs) {
    startFrom(BoxPlan.of(kind, rows, columns, dabs).box(draft().id()));
  }

  /** Adds a half-pan well where there is room, and picks it. */
  void addWell() {
    WellDraft fresh =
        new WellDraft(
            draft().freshWellId(),
            draft().freshLabel(),
            WellKind.HALF_PAN,
            0,
            0,
            NEW_WELL_WIDTH_MM,
            NEW_WELL_HEIGHT_MM);
    change(d -> d.with(placedFree(d, fresh)));
    picked.set(Optional.of(fresh.id()));
  }

  /** Removes the well picked. */
  void removePicked() {
    picked.get().ifPresent(id -> change(d -> d.without(id)));
    picked.set(Optional.empty());
  }

  /** Picks the next well, or the one before. */
  void step(int by) {
    List<WellDraft> wells = draft().wells();
    if (wells.isEmpty()) {
      return;
    }
    int now = pickedWell().map(wells::indexOf).orElse(by > 0 ? -1 : wells.size());
    picked.set(Optional.of(wells.get(Math.floorMod(now + by, wells.size())).id()));
  }

  /** What is not right; empty if nothing is. */
  ObservableValue<String> problemProperty() {
    return draft.map(d -> d.problem().orElse(""));
  }

  /** Says which paints would leave their wells; empty if none would. */
  ObservableValue<String> leavingProperty() {
    return draft.map(d -> BoxEditorWords.leaving(leaving(d)));
  }

  private List<String> leaving(BoxDraft changed) {
    List<String> leaving = new ArrayList<>();
    for (Lineup lineup : kit.lineups()) {
      if (!lineup.boxId().equals(changed.id())) {
        continue;
      }
      for (Well well : kit.boxOf(lineup).wells()) {
        if (changed.find(well.id()).isEmpty()) {
          lineup
              .in(well.id())
              .flatMap(filling -> kit.shelf().find(filling.paintId()))
              .map(Paint::name)
              .ifPresent(
                  paint -> leaving.add(BoxEditorWords.leaves(paint, well.label(), lineup.name())));
        }
      }
    }
    return leaving;
  }

  private static WellDraft placedFree(BoxDraft draft, WellDraft well) {
    for (double y = 1; y + well.heightMm() <= draft.heightMm(); y++) {
      for (double x = 1; x + well.widthMm() <= draft.widthMm(); x++) {
        WellDraft tried = well.at(x, y);
        if (draft.wells().stream().noneMatch(tried::overlaps)) {
          return tried;
        }
      }
    }
    return well;
  }
}
