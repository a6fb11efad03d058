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
import org.panwright.app.chip.ToneBook;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.fx.Parted;
import org.panwright.app.fx.Sentence;
import org.panwright.words.CompareWords;

/** Two lineups side by side: boxes above, grids below, what is won and lost on the right. */
public final class CompareView extends BorderPane implements Parted {
  private final CompareModel model;
  private final ComparedPage page;
  private final PickedCell picked;
  private final ComparedHalf first;
  private final ComparedHalf second;
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
    picked = new PickedCell(model);
    first =
        new ComparedHalf(Compared::first, Compared::firstCells, tones, picked, open, this::tell);
    second =
        new ComparedHalf(Compared::second, Compared::secondCells, tones, picked, open, this::tell);
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
    both.addRow(0, first.name(), second.name());
    both.addRow(1, first.box(), second.box());
    both.addRow(2, first.grid(), second.grid());
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
      show(first);
      show(second);
    } else if (!isBegun) {
      isBegun = true;
      Optional<Compared> begun = model.comparedProperty().get();
      later.execute(this::showSide);
      later.execute(() -> show(first));
      later.execute(() -> show(second));
      later.execute(
          () -> {
            isWhole = true;
            if (!model.comparedProperty().get().equals(begun)) {
              show();
            }
          });
    }
  }

  private void showSide() {
    side.show(model.comparedProperty().get());
  }

  private void show(ComparedHalf half) {
    model
        .comparedProperty()
        .get()
        .ifPresent(
            shown -> {
              half.show(shown);
              mark();
            });
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
    first.mark(picked.paintIds());
    second.mark(picked.paintIds());
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
              first.say(shown, said);
              second.say(shown, said);
            });
  }
}
