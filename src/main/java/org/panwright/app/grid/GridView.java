package org.panwright.app.grid;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.app.fx.Sentence;
import org.panwright.colour.Oklab;
import org.panwright.colour.Srgb;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Wash;
import org.panwright.words.ColourWords;
import org.panwright.words.GridWords;
import org.panwright.words.MixWords;
import org.panwright.words.PaintWords;

/**
 * The mix grid with its choice of reading and wash, and a line that says what is under the pointer.
 */
public final class GridView extends VBox {
  private final GridModel model;
  private final Label readout = new Label();
  private final Label empty = Sentence.of(GridWords.EMPTY, "empty-hint");
  private final GridCanvas canvas;

  /**
   * @param open goes to the picked mix shown large
   */
  public GridView(GridModel model, Runnable open) {
    this.model = model;
    getStyleClass().addAll("pane", "grid-view");
    canvas = new GridCanvas(model, this::tell, open);
    StackPane sheet = new StackPane(canvas, empty);
    empty.visibleProperty().bind(model.pictureProperty().map(p -> p.size() == 0));
    readout.getStyleClass().add("readout");
    readout.setMinHeight(Region.USE_PREF_SIZE);
    readout.visibleProperty().bind(empty.visibleProperty().not());
    VBox.setVgrow(sheet, Priority.ALWAYS);
    getChildren().addAll(head(), sheet, readout);
    model.pictureProperty().addListener(o -> tell(Optional.empty()));
    model.selectionProperty().addListener(o -> tell(Optional.empty()));
    tell(Optional.empty());
  }

  /** The grid alone, for a picture of it. */
  public static CanvasRegion figure(GridModel model) {
    return new GridCanvas(model, cell -> {}, () -> {});
  }

  private HBox head() {
    Label title = new Label(GridWords.TITLE);
    title.getStyleClass().add("pane-title");
    title.setMinWidth(Region.USE_PREF_SIZE);
    ToggleGroup group = new ToggleGroup();
    HBox readings = new HBox();
    readings.getStyleClass().add("joined");
    ToggleButton leaning = readingButton(Reading.LEANING, group);
    leaning.getStyleClass().add("first");
    ToggleButton strongAndThin = readingButton(Reading.STRONG_AND_THIN, group);
    strongAndThin.getStyleClass().add("last");
    readings.getChildren().addAll(leaning, strongAndThin);
    ChoiceBox<Wash> washes = new ChoiceBox<>();
    washes.getItems().setAll(Wash.values());
    washes.setConverter(new ByLabel<>(wash -> PaintWords.label(wash)));
    washes.valueProperty().bindBidirectional(model.washProperty());
    washes.disableProperty().bind(model.readingProperty().isNotEqualTo(Reading.LEANING));
    washes.setAccessibleText(GridWords.WASH);
    washes.setTooltip(new Tooltip(GridWords.WASH));
    Region space = new Region();
    HBox.setHgrow(space, Priority.ALWAYS);
    HBox head = new HBox(title, space, readings, washes);
    head.getStyleClass().add("pane-head");
    head.setAlignment(Pos.CENTER_LEFT);
    return head;
  }

  private ToggleButton readingButton(Reading reading, ToggleGroup group) {
    boolean leaning = reading == Reading.LEANING;
    ToggleButton button = new ToggleButton(leaning ? GridWords.LEANING : GridWords.STRONG_AND_THIN);
    button.setTooltip(
        new Tooltip(leaning ? GridWords.LEANING_MEANS : GridWords.STRONG_AND_THIN_MEANS));
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setToggleGroup(group);
    button.setSelected(model.readingProperty().get() == reading);
    button.setOnAction(
        e -> {
          button.setSelected(true);
          model.readingProperty().set(reading);
        });
    return button;
  }

  /** Says what a cell holds, or else the picked one, or else how the grid is read. */
  private void tell(Optional<int[]> hovered) {
    String said =
        hovered
            .filter(at -> Math.max(at[0], at[1]) < model.picture().size())
            .or(model::picked)
            .map(at -> cell(at[0], at[1]))
            .orElseGet(
                () ->
                    model.picture().trial()
                        ? GridWords.TRIAL
                        : model.readingProperty().get() == Reading.LEANING
                            ? GridWords.LEANING_MEANS
                            : GridWords.STRONG_AND_THIN_MEANS);
    readout.setText(said);
    canvas.setAccessibleText(said);
  }

  private String cell(int row, int column) {
    GridPicture picture = model.picture();
    GridPicture.Cell cell = picture.cell(row, column);
    Srgb shown = cell.colour().shown();
    String looks =
        MixWords.looks(ColourWords.describe(Oklab.ofD65(shown.toXyzD65()).toOklch()), cell.trust());
    String rowName = picture.heads().get(row).name();
    String washName = PaintWords.label(cell.wash());
    if (row == column) {
      return GridWords.alone(rowName, washName, looks);
    }
    Ratio ratio = Ratio.GRID.get(cell.ratio());
    String columnName = picture.heads().get(column).name();
    return GridWords.mix(rowName, ratio, columnName, washName, looks);
  }
}
