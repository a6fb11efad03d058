package org.panwright.app.compare;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.RowConstraints;
import org.panwright.app.Selection;
import org.panwright.app.box.BoxPicture;
import org.panwright.app.box.StillBox;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.fx.Sentence;
import org.panwright.kit.Kit;
import org.panwright.paint.Paint;
import org.panwright.words.CompareWords;

/** Two lineups side by side: boxes above, grids below, what is won and lost on the right. */
public final class CompareView extends BorderPane {
  private final CompareModel model;
  private final ComparedPage page;
  private final ToneBook tones;
  private final PickedCell picked;
  private final StillBox firstBox;
  private final StillBox secondBox;
  private final AlignedGrid firstGrid;
  private final AlignedGrid secondGrid;
  private final Label firstName = heading();
  private final Label secondName = heading();
  private final Label readout = Sentence.of(CompareWords.CELLS_HINT, "soft", "small");
  private final Label nothing = Sentence.of(CompareWords.NOTHING, "empty-hint");
  private final ComparedSide side;
  private final GridPane both = new GridPane();
  private final PagePane sheet;

  /**
   * @param arrange asks how the lineup looked at is to be laid into its wells
   * @param open shows what is picked large
   */
  public CompareView(
      CompareModel model,
      ComparedPage page,
      ToneBook tones,
      Dialogs dialogs,
      Runnable arrange,
      Runnable open) {
    this.model = model;
    this.page = page;
    this.tones = tones;
    picked = new PickedCell(model);
    firstBox = new StillBox(picked::pick);
    secondBox = new StillBox(picked::pick);
    firstGrid = new AlignedGrid(picked, open, this::tell);
    secondGrid = new AlignedGrid(picked, open, this::tell);
    side = new ComparedSide(model.session(), open);
    sheet = new PagePane(page, dialogs);
    getStyleClass().addAll("pane", "compare");
    setTop(new CompareBar(model, page, arrange));
    layBoth(open);
    setRight(side);
    model.comparedProperty().addListener(changed -> show());
    model.session().selectionProperty().addListener(changed -> mark());
    page.lookedProperty().addListener(changed -> showCentre());
    show();
  }

  private static Label heading() {
    Label label = new Label();
    label.getStyleClass().add("pane-title");
    return label;
  }

  private void layBoth(Runnable open) {
    ColumnConstraints half = new ColumnConstraints();
    half.setPercentWidth(50);
    both.getColumnConstraints().setAll(half, half);
    RowConstraints head = new RowConstraints();
    RowConstraints boxes = new RowConstraints();
    boxes.setPercentHeight(42);
    RowConstraints grids = new RowConstraints();
    grids.setVgrow(Priority.ALWAYS);
    both.getRowConstraints().setAll(head, boxes, grids);
    both.addRow(0, firstName, secondName);
    both.addRow(1, firstBox, secondBox);
    both.addRow(2, firstGrid, secondGrid);
    Button large = new Button(CompareWords.OPEN);
    large.setMinWidth(Region.USE_PREF_SIZE);
    large.setOnAction(event -> open.run());
    large
        .disableProperty()
        .bind(
            model
                .session()
                .selectionProperty()
                .map(s -> !(s instanceof Selection.OfMix || s instanceof Selection.OfColour)));
    HBox.setHgrow(readout, Priority.ALWAYS);
    readout.setMaxWidth(Double.MAX_VALUE);
    HBox line = new HBox(8, readout, large);
    line.setAlignment(Pos.CENTER_LEFT);
    both.add(line, 0, 3, 2, 1);
    both.getStyleClass().add("compare-both");
  }

  private void show() {
    Optional<Compared> compared = model.comparedProperty().get();
    showCentre();
    side.show(compared);
    if (compared.isEmpty()) {
      return;
    }
    Compared shown = compared.get();
    Kit kit = shown.ofFirst().kit();
    firstName.setText(shown.first().label());
    secondName.setText(shown.second().label());
    firstBox.show(Optional.of(BoxPicture.of(kit, shown.first().lineup(), tones)));
    secondBox.show(Optional.of(BoxPicture.of(kit, shown.second().lineup(), tones)));
    List<Paint> paints =
        shown.paints().stream().flatMap(id -> kit.shelf().find(id).stream()).toList();
    firstGrid.show(shown.firstCells(), paints);
    secondGrid.show(shown.secondCells(), paints);
    mark();
  }

  private void showCentre() {
    boolean isCompared = model.comparedProperty().get().isPresent();
    setCenter(!isCompared ? nothing : page.lookedProperty().get() ? sheet : both);
  }

  /** What is picked is marked on both sides. */
  private void mark() {
    firstBox.mark(picked.paintIds());
    secondBox.mark(picked.paintIds());
    firstGrid.repaint();
    secondGrid.repaint();
    tell(Optional.empty());
  }

  /** Says what a cell holds on both sides, or else the one picked, or else what cells are. */
  private void tell(Optional<int[]> cell) {
    String said = picked.words(cell);
    readout.setText(said.isEmpty() ? CompareWords.CELLS_HINT : said);
    model
        .comparedProperty()
        .get()
        .ifPresent(
            shown -> {
              firstGrid.setAccessibleText(CompareWords.grid(shown.first().label(), said));
              secondGrid.setAccessibleText(CompareWords.grid(shown.second().label(), said));
            });
  }
}
