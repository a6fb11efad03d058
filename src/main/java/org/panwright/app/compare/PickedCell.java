package org.panwright.app.compare;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.colour.Oklab;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Paint;
import org.panwright.words.ColourWords;
import org.panwright.words.CompareWords;
import org.panwright.words.GridWords;
import org.panwright.words.MixWords;
import org.panwright.words.PaintWords;

/** What is picked in both boxes and both grids at once, and what it holds on either side. */
final class PickedCell {
  private final CompareModel model;
  private final Session session;

  PickedCell(CompareModel model) {
    this.model = model;
    session = model.session();
  }

  /** Picks a cell; one outside the grids changes nothing. */
  void pick(int row, int column) {
    List<String> paints = paints();
    if (row >= 0 && column >= 0 && row < paints.size() && column < paints.size()) {
      String one = paints.get(row);
      String two = paints.get(column);
      session.selectionProperty().set(new Selection.OfMix(one, two, AlignedCells.ratio(one, two)));
    }
  }

  /** Picks a paint. */
  void pick(String paintId) {
    session.selectionProperty().set(new Selection.OfPaint(paintId));
  }

  /** Picks the cell so many rows and columns on, within the grids; the first if none is picked. */
  void step(int down, int right) {
    int last = paints().size() - 1;
    int[] from = place().orElse(new int[] {-down, -right});
    pick(Math.max(0, Math.min(last, from[0] + down)), Math.max(0, Math.min(last, from[1] + right)));
  }

  /** Row and column of what is picked; a paint alone lies on the diagonal. */
  Optional<int[]> place() {
    List<String> paints = paints();
    Selection selection = session.selectionProperty().get();
    int row = -1;
    int column = -1;
    if (selection instanceof Selection.OfMix mix) {
      row = paints.indexOf(mix.rowPaintId());
      column = paints.indexOf(mix.columnPaintId());
    } else if (!(selection instanceof Selection.OfColour)) {
      row = paintIds().stream().findFirst().map(paints::indexOf).orElse(-1);
      column = row;
    }
    return row >= 0 && column >= 0 ? Optional.of(new int[] {row, column}) : Optional.empty();
  }

  /** The paints that are picked: one, two of a mix, those of a recipe marked. */
  Set<String> paintIds() {
    Selection selection = session.selectionProperty().get();
    if (selection instanceof Selection.OfPaint paint) {
      return Set.of(paint.paintId());
    }
    if (selection instanceof Selection.OfMix mix) {
      return mix.rowPaintId().equals(mix.columnPaintId())
          ? Set.of(mix.rowPaintId())
          : Set.of(mix.rowPaintId(), mix.columnPaintId());
    }
    if (selection instanceof Selection.OfColour colour) {
      return Set.copyOf(colour.markedPaintIds());
    }
    if (selection instanceof Selection.OfWell well) {
      Optional<Filling> filling = session.lineup().flatMap(lineup -> lineup.in(well.wellId()));
      return filling.map(f -> Set.of(f.paintId())).orElse(Set.of());
    }
    return Set.of();
  }

  /**
   * What a cell holds on both sides; without one what is picked, empty if that is nothing to mix.
   */
  String words(Optional<int[]> cell) {
    return model
        .comparedProperty()
        .get()
        .flatMap(
            shown ->
                cell.filter(at -> Math.max(at[0], at[1]) < paints().size())
                    .or(this::place)
                    .map(at -> words(shown, at[0], at[1])))
        .or(this::colour)
        .orElse("");
  }

  private Optional<String> colour() {
    return session.selectionProperty().get() instanceof Selection.OfColour colour
        ? Optional.of(colour.name())
        : Optional.empty();
  }

  private static String words(Compared shown, int row, int column) {
    Kit kit = shown.ofFirst().kit();
    String wash = PaintWords.label(AlignedCells.WASH);
    String one = name(kit, shown.paints().get(row));
    String mix =
        row == column
            ? GridWords.alone(one, wash)
            : GridWords.mix(
                one,
                Ratio.GRID.get(AlignedCells.LEADING),
                name(kit, shown.paints().get(column)),
                wash);
    return CompareWords.cell(
        mix,
        shown.first().label(),
        looks(shown, shown.firstCells(), row, column),
        shown.second().label(),
        looks(shown, shown.secondCells(), row, column));
  }

  private static String looks(Compared shown, AlignedCells side, int row, int column) {
    return side.at(row, column)
        .map(srgb -> ColourWords.describe(Oklab.ofD65(srgb.toXyzD65()).toOklch()))
        .map(
            looks ->
                MixWords.looks(
                    looks, side.trust(shown.paints().get(row), shown.paints().get(column))))
        .orElse(CompareWords.NOT_IN_IT);
  }

  private static String name(Kit kit, String paintId) {
    return kit.shelf().find(paintId).map(Paint::name).orElse(paintId);
  }

  private List<String> paints() {
    return model.comparedProperty().get().map(Compared::paints).orElse(List.of());
  }
}
