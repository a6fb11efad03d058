package org.panwright.app.chart;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.Sentence;
import org.panwright.app.swatches.Foot;
import org.panwright.app.swatches.HeldRemarks;
import org.panwright.app.swatches.PictureMarks;
import org.panwright.app.swatches.ReadingWay;
import org.panwright.app.swatches.Remarks;
import org.panwright.app.swatches.WayWords;
import org.panwright.app.swatches.WorkBar;
import org.panwright.swatch.grid.CellVerdict;
import org.panwright.words.ChartReadingWords;
import org.panwright.words.PictureWords;
import org.panwright.words.SwatchesWords;

/** A hand-painted chart beside its picture: the cells, those that disagree, what it holds. */
public final class ChartSide implements ReadingWay {
  /** What it says of itself. */
  public static final WayWords WORDS =
      new WayWords(
          ChartReadingWords.NAME,
          ChartReadingWords.PURPOSE,
          ChartReadingWords.EMPTY,
          ChartReadingWords.CORNERS);

  private final ChartModel model;
  private final Label problem = Sentence.whileSaid("warn");
  private final Label waiting = Sentence.of(ChartReadingWords.PLACE_CORNERS, "soft");
  private final Label legend = Sentence.of(ChartReadingWords.LEGEND, "soft", "small");
  private final ChartCanvas cells;
  private final CellCard cell;
  private final Remarks remarks = new Remarks();
  private final WorkBar work;
  private final VBox content = new VBox(12);
  private final Foot foot;

  public ChartSide(ChartModel model) {
    this.model = model;
    work = new WorkBar(model.shareProperty(), this::leaveOff, model::takeUp);
    foot = new Foot(work, ChartReadingWords.KEEP, this::keep);
    cells = new ChartCanvas(model);
    cell = new CellCard(model);
    content
        .getChildren()
        .setAll(problem, waiting, legend, cells, cell, remarks, new ChartForm(model));
    for (Node part : List.of(waiting, legend, cells)) {
      part.managedProperty().bind(part.visibleProperty());
    }
    model.stateProperty().addListener((property, before, now) -> show(now));
    show(model.stateProperty().get());
  }

  @Override
  public WayWords words() {
    return WORDS;
  }

  @Override
  public PictureMarks marks() {
    return model.corners();
  }

  @Override
  public Region content() {
    return content;
  }

  @Override
  public Region foot() {
    return foot;
  }

  @Override
  public void setChosen(boolean chosen) {
    foot.say("");
    model.setChosen(chosen);
  }

  private void show(ChartState state) {
    problem.setText(SwatchesWords.problem(state.fault(), state.refusal()));
    waiting.setVisible(
        !model.corners().placesProperty().get().isEmpty() && !model.corners().arePlaced());
    boolean read = !state.cells().isEmpty();
    legend.setVisible(read);
    cells.setVisible(read);
    switch (state.work()) {
      case NOTHING -> work.hide();
      case LEFT_OFF -> work.leftOff(ChartReadingWords.LEFT_OFF, ChartReadingWords.COMPARE);
      default -> work.run(ChartReadingWords.work(state.work().name()));
    }
    if (state.work() == ChartState.Work.READING) {
      foot.say("");
    }
    foot.allow(model.canKeep());
    showRemarks(state);
  }

  private void showRemarks(ChartState state) {
    remarks.show(state.notes().stream().map(PictureWords::sentence).toList());
    HeldRemarks held = new HeldRemarks();
    for (ChartCell read : state.cells()) {
      held.add(ChartReadingWords.place(read.reading()), read.reading().patch());
    }
    held.sentences().forEach(remarks::warn);
    state
        .labels()
        .ifPresent(
            labels -> {
              remarks.warn(
                  ChartReadingWords.labels(labels, state.grid().orElseThrow(), model::name));
              Button exchange = new Button(ChartReadingWords.exchangeLabels(labels));
              exchange.setOnAction(event -> model.exchangeLabels());
              remarks.add(exchange);
            });
    List<ChartCell> odd =
        state.cells().stream().filter(c -> c.verdict() != CellVerdict.AGREES).toList();
    if (!state.cells().isEmpty() && state.work() == ChartState.Work.NOTHING) {
      String told =
          odd.isEmpty() && state.labels().isPresent()
              ? ChartReadingWords.AGREE_BUT_EXCHANGED
              : ChartReadingWords.summary(state.cells().size(), odd.size());
      Label summary = Sentence.of(told);
      remarks.add(summary);
    }
    for (ChartCell cell : odd) {
      Hyperlink link =
          new Hyperlink(
              ChartReadingWords.odd(
                  cell.reading(),
                  cell.verdict(),
                  cell.judged().orElseThrow().distance(),
                  model::name));
      link.setWrapText(true);
      link.setOnAction(event -> model.cursor().pick(cell.reading().row(), cell.reading().column()));
      remarks.add(link);
    }
    int beyond = (int) state.cells().stream().filter(ChartCell::isBeyondPicture).count();
    if (beyond > 0) {
      remarks.add(Sentence.of(ChartReadingWords.beyond(beyond)));
    }
  }

  private void leaveOff() {
    model.leaveOff();
    if (model.isSettled() && model.canKeep()) {
      foot.say(ChartReadingWords.CANCELLED);
      foot.focusButton();
    }
  }

  private void keep() {
    foot.say("");
    int kept = model.coats().values().stream().mapToInt(List::size).sum();
    int paints = model.coats().size();
    model.keep(() -> foot.say(ChartReadingWords.kept(kept, paints)));
  }
}
