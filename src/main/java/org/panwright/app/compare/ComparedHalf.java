package org.panwright.app.compare;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.Label;
import org.panwright.app.box.BoxPicture;
import org.panwright.app.box.StillBox;
import org.panwright.app.chip.ToneBook;
import org.panwright.kit.Kit;
import org.panwright.paint.Paint;
import org.panwright.words.CompareWords;

/** One of the two lineups compared: its name, its box, its grid. */
final class ComparedHalf {
  private final Function<Compared, Side> side;
  private final Function<Compared, AlignedCells> cells;
  private final ToneBook tones;
  private final Label name = new Label();
  private final StillBox box;
  private final AlignedGrid grid;

  /**
   * @param side which of the two compared it is
   * @param cells its cells
   * @param open shows what is picked large
   * @param hovered told the cell under the pointer
   */
  ComparedHalf(
      Function<Compared, Side> side,
      Function<Compared, AlignedCells> cells,
      ToneBook tones,
      PickedCell picked,
      Runnable open,
      Consumer<Optional<int[]>> hovered) {
    this.side = side;
    this.cells = cells;
    this.tones = tones;
    name.getStyleClass().add("pane-title");
    box = new StillBox(picked::pick);
    grid = new AlignedGrid(picked, open, hovered);
  }

  Label name() {
    return name;
  }

  StillBox box() {
    return box;
  }

  AlignedGrid grid() {
    return grid;
  }

  void show(Compared shown) {
    Kit kit = shown.ofFirst().kit();
    List<Paint> paints =
        shown.paints().stream().flatMap(id -> kit.shelf().find(id).stream()).toList();
    Side own = side.apply(shown);
    name.setText(own.label());
    box.show(Optional.of(BoxPicture.of(kit, own.lineup(), tones)));
    grid.show(cells.apply(shown), paints);
  }

  /** Marks what is picked. */
  void mark(Set<String> paintIds) {
    box.mark(paintIds);
    grid.repaint();
  }

  /** Says to a screen reader what the grid shows and what a cell of it holds. */
  void say(Compared shown, String cell) {
    grid.setAccessibleText(CompareWords.grid(side.apply(shown).label(), cell));
  }
}
