package org.panwright.app.boxes;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import org.panwright.analysis.arrange.FitCheck;
import org.panwright.kit.Box;
import org.panwright.kit.BoxPlan;
import org.panwright.kit.FixtureKind;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.PanKind;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.paint.Paint;
import org.panwright.words.BoxEditorWords;

/** A box while it is being edited, the well picked, and what the changes would do to lineups. */
final class BoxEditorModel {
  private static final double NEW_WELL_WIDTH_MM = 16;
  private static final double NEW_WELL_HEIGHT_MM = 19;
  private static final int MOST_STEPS = 200;

  private final Kit kit;
  private final ReadOnlyObjectWrapper<BoxDraft> draft;
  private final ObjectProperty<Optional<String>> picked =
      new SimpleObjectProperty<>(Optional.empty());
  private final ObjectProperty<Optional<String>> pickedPart =
      new SimpleObjectProperty<>(Optional.empty());
  private final Deque<BoxDraft> past = new ArrayDeque<>();
  private final Deque<BoxDraft> future = new ArrayDeque<>();
  private final ReadOnlyBooleanWrapper undoable = new ReadOnlyBooleanWrapper();
  private final ReadOnlyBooleanWrapper redoable = new ReadOnlyBooleanWrapper();
  private boolean inOneStep;

  BoxEditorModel(Kit kit, BoxDraft start) {
    this.kit = kit;
    draft = new ReadOnlyObjectWrapper<>(start);
    picked.addListener(
        (property, before, now) -> now.ifPresent(id -> pickedPart.set(Optional.empty())));
    pickedPart.addListener(
        (property, before, now) -> now.ifPresent(id -> picked.set(Optional.empty())));
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

  /** Changes the draft; one step for {@link #undo}, unless it is part of a longer one. */
  void change(UnaryOperator<BoxDraft> change) {
    BoxDraft changed = change.apply(draft());
    if (changed.equals(draft())) {
      return;
    }
    if (!inOneStep) {
      remember();
    }
    draft.set(changed);
  }

  /** Makes all changes until {@link #endStep} one step. */
  void beginStep() {
    remember();
    inOneStep = true;
  }

  /** Ends what {@link #beginStep} began; a step in which nothing changed is none. */
  void endStep() {
    inOneStep = false;
    if (draft().equals(past.peek())) {
      past.pop();
    }
    tellSteps();
  }

  /** Takes the last step back. */
  void undo() {
    go(past, future);
  }

  /** Does the last step taken back again. */
  void redo() {
    go(future, past);
  }

  ReadOnlyBooleanProperty undoableProperty() {
    return undoable.getReadOnlyProperty();
  }

  ReadOnlyBooleanProperty redoableProperty() {
    return redoable.getReadOnlyProperty();
  }

  private void remember() {
    past.push(draft());
    if (past.size() > MOST_STEPS) {
      past.removeLast();
    }
    future.clear();
    tellSteps();
  }

  private void go(Deque<BoxDraft> from, Deque<BoxDraft> to) {
    if (!from.isEmpty() && !inOneStep) {
      to.push(draft());
      draft.set(from.pop());
      picked.set(picked.get().filter(id -> draft().find(id).isPresent()));
      pickedPart.set(pickedPart.get().filter(id -> draft().findPart(id).isPresent()));
      tellSteps();
    }
  }

  private void tellSteps() {
    undoable.set(!past.isEmpty());
    redoable.set(!future.isEmpty());
  }

  /** The id of the mixing area, strip, magnet or clip picked; never together with a well. */
  ObjectProperty<Optional<String>> pickedPartProperty() {
    return pickedPart;
  }

  Optional<PartDraft> pickedPart() {
    return pickedPart.get().flatMap(draft()::findPart);
  }

  /** Changes the part picked, if there is one. */
  void changePart(UnaryOperator<PartDraft> change) {
    pickedPart.get().ifPresent(id -> change(d -> d.changingPart(id, change)));
  }

  /** Adds a part of a usual size, and picks it. */
  void addPart(FixtureKind kind) {
    BoxDraft now = draft();
    boolean inLid = kind == FixtureKind.MIXING_AREA;
    double areaWidth = inLid ? now.lidWidthMm() : now.widthMm();
    double areaHeight = inLid ? now.lidHeightMm() : now.heightMm();
    double width = kind == FixtureKind.DAB_STRIP || inLid ? areaWidth - 8 : 10;
    double height =
        switch (kind) {
          case MIXING_AREA -> areaHeight - 8;
          case DAB_STRIP -> 12;
          case MAGNET -> 5;
          case CLIP -> 3;
        };
    PartDraft part =
        new PartDraft(
            now.freshPartId(),
            kind,
            inLid,
            4,
            4,
            Math.max(1, width),
            Math.max(1, height),
            kind == FixtureKind.MAGNET ? 1 : 0);
    List<PartDraft> more = new ArrayList<>(now.parts());
    more.add(placedFree(now, part));
    change(d -> d.withParts(more));
    pickedPart.set(Optional.of(part.id()));
  }

  private static PartDraft placedFree(BoxDraft draft, PartDraft part) {
    for (double y = part.yMm(); y + part.heightMm() <= draft.heightMm(); y += 0.5) {
      PartDraft tried = part.at(part.xMm(), y);
      if (draft.partProblem(tried).isEmpty()) {
        return tried;
      }
    }
    return part;
  }

  /** Adds rows and columns of pans of one kind beneath what is there. */
  void addRows(WellKind kind, int rows, int columns) {
    BoxDraft now = draft();
    double lowest =
        now.wells().stream().mapToDouble(well -> well.yMm() + well.heightMm()).max().orElse(0);
    BoxDraft grown = now;
    for (Well well : BoxPlan.of(kind, rows, columns, 0).box("rows").wells()) {
      WellDraft placed = WellDraft.of(well);
      grown =
          grown.with(
              placed
                  .named(grown.freshWellId(), grown.freshLabel())
                  .at(placed.xMm(), Math.rint(2 * (placed.yMm() + lowest)) / 2));
    }
    BoxDraft withRows = grown;
    change(d -> withRows);
  }

  /** Adds a well where it was drawn, its kind by its size, and picks it. */
  void drawWell(double xMm, double yMm, double widthMm, double heightMm) {
    WellDraft fresh =
        new WellDraft(
            draft().freshWellId(),
            draft().freshLabel(),
            kindFor(widthMm, heightMm),
            xMm,
            yMm,
            widthMm,
            heightMm,
            Optional.empty());
    change(d -> d.with(fresh));
    picked.set(Optional.of(fresh.id()));
  }

  /** What a place of this size is made for: half pans are about 19 × 16 mm, pans about 30 × 19. */
  private static WellKind kindFor(double widthMm, double heightMm) {
    double area = widthMm * heightMm;
    return area < 200 ? WellKind.DAB : area < 430 ? WellKind.HALF_PAN : WellKind.PAN;
  }

  /** Moves what is picked to about here; wells snap to walls and neighbours. */
  void moveTo(double xMm, double yMm) {
    if (pickedPart().isPresent()) {
      changePart(part -> part.at(Math.rint(2 * xMm) / 2, Math.rint(2 * yMm) / 2));
    } else {
      changePicked(well -> Snap.in(draft()).placed(well, xMm, yMm));
    }
  }

  /** Moves what is picked by so much. */
  void moveBy(double dxMm, double dyMm) {
    changePart(part -> part.at(part.xMm() + dxMm, part.yMm() + dyMm));
    changePicked(well -> well.at(well.xMm() + dxMm, well.yMm() + dyMm));
  }

  /**
   * Says how the pans fit and how many of each kind go in a row; empty while the draft is wrong.
   */
  ObservableValue<String> fitProperty() {
    return draft.map(
        d ->
            d.toBox()
                .map(box -> BoxEditorWords.fit(FitCheck.of(box, kit.stock()), box, kit.stock()))
                .orElse(""));
  }

  /** The kinds of pans of the kit. */
  List<PanKind> pans() {
    return kit.stock().pans();
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
                .withWells(planned.wells())
                .withParts(planned.parts()));
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
            NEW_WELL_HEIGHT_MM,
            Optional.empty());
    change(d -> d.with(placedFree(d, fresh)));
    picked.set(Optional.of(fresh.id()));
  }

  /** Removes the well or part picked. */
  void removePicked() {
    pickedPart.get().ifPresent(id -> change(d -> d.withoutPart(id)));
    pickedPart.set(Optional.empty());
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
