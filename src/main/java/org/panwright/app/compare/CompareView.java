package org.panwright.app.compare;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
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
import org.panwright.app.fx.Parted;
import org.panwright.app.fx.Sentence;
import org.panwright.kit.Kit;
import org.panwright.paint.Paint;
import org.panwright.words.CompareWords;

/** Two lineups side by side: boxes above, grids below, what is won and lost on the right. */
public final class CompareView extends BorderPane implements Parted {
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
  private final Dialogs dialogs;
  private Optional<PagePane> sheet = Optional.empty();
  private final Executor later;
  private boolean isLaid;
  private boolean isBegun;
  private boolean isWhole;

  /**
   * @param arrange asks how the lineup looked at is to be laid into its wells
   * @param open shows what is picked large
   * @param later when what is below the bar is put in
   */
  public CompareView(
      CompareModel model,
      ComparedPage page,
      ToneBook tones,
      Dialogs dialogs,
      Runnable arrange,
      Runnable open,
      Executor later) {
    this.model = model;
    this.page = page;
    this.dialogs = dialogs;
    this.later = later;
    this.tones = tones;
    picked = new PickedCell(model);
    firstBox = new StillBox(picked::pick);
    secondBox = new StillBox(picked::pick);
    firstGrid = new AlignedGrid(picked, open, this::tell);
    secondGrid = new AlignedGrid(picked, open, this::tell);
    side = new ComparedSide(model.session(), open);
    getStyleClass().addAll("pane", "compare");
    setTop(new CompareBar(model, page, arrange));
    later.execute(() -> setRight(side));
    later.execute(
        () -> {
          layBoth(open);
          isLaid = true;
          showCentre();
        });
    model.comparedProperty().addListener(changed -> show());
    model.session().selectionProperty().addListener(changed -> mark());
    page.lookedProperty().addListener(changed -> showCentre());
    show();
  }

  @Override
  public List<Node> parts() {
    return Stream.concat(
            Stream.of(getTop()),
            Stream.concat(
                (getCenter() == both ? both.getChildren() : List.of(getCenter())).stream(),
                Stream.of(side)))
        .toList();
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

  /** The first two compared come in one after the other; later ones take their places at once. */
  private void show() {
    showCentre();
    if (model.comparedProperty().get().isEmpty() || isWhole) {
      showSide();
      showFirst();
      showSecond();
    } else if (!isBegun) {
      isBegun = true;
      Optional<Compared> first = model.comparedProperty().get();
      later.execute(this::showSide);
      later.execute(this::showFirst);
      later.execute(this::showSecond);
      later.execute(
          () -> {
            isWhole = true;
            if (!model.comparedProperty().get().equals(first)) {
              show();
            }
          });
    }
  }

  private void showSide() {
    side.show(model.comparedProperty().get());
  }

  private void showFirst() {
    model
        .comparedProperty()
        .get()
        .ifPresent(
            shown -> {
              Kit kit = shown.ofFirst().kit();
              firstName.setText(shown.first().label());
              firstBox.show(Optional.of(BoxPicture.of(kit, shown.first().lineup(), tones)));
              firstGrid.show(shown.firstCells(), paints(shown));
              mark();
            });
  }

  private void showSecond() {
    model
        .comparedProperty()
        .get()
        .ifPresent(
            shown -> {
              Kit kit = shown.ofFirst().kit();
              secondName.setText(shown.second().label());
              secondBox.show(Optional.of(BoxPicture.of(kit, shown.second().lineup(), tones)));
              secondGrid.show(shown.secondCells(), paints(shown));
              mark();
            });
  }

  private static List<Paint> paints(Compared shown) {
    Kit kit = shown.ofFirst().kit();
    return shown.paints().stream().flatMap(id -> kit.shelf().find(id).stream()).toList();
  }

  private void showCentre() {
    boolean isCompared = model.comparedProperty().get().isPresent();
    if (isLaid) {
      setCenter(!isCompared ? nothing : page.lookedProperty().get() ? sheet() : both);
    }
  }

  private PagePane sheet() {
    if (sheet.isEmpty()) {
      sheet = Optional.of(new PagePane(page, dialogs));
    }
    return sheet.get();
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
