package org.panwright.app.swatches;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FileKind;
import org.panwright.app.fx.Parted;
import org.panwright.app.fx.Sentence;
import org.panwright.words.SwatchesWords;

/** The picture of painted swatches beside what was read off it in one of several ways. */
public final class SwatchesView extends HBox implements Parted {
  private static final FileKind PICTURE =
      new FileKind(
          SwatchesWords.OPEN_TITLE,
          SwatchesWords.KIND,
          ".jpg",
          List.of(".jpeg", ".png", ".JPG", ".JPEG", ".PNG"));
  private static final double SIDE = 400;

  private final PictureModel pictures;
  private final List<ReadingWay> ways;
  private final Dialogs dialogs;
  private final Executor later;
  private final PictureDesk desk;
  private final Set<ReadingWay> seen = new HashSet<>();
  private final ToggleGroup group = new ToggleGroup();
  private final Label purpose = Sentence.of("", "soft");
  private final Label empty = Sentence.of("", "empty-hint");
  private final Label hint = Sentence.of("", "soft", "small", "swatches-hint");
  private final VBox head = new VBox(12);
  private final VBox content = new VBox();
  private final StackPane foot = new StackPane();
  private PictureMarks marks;

  /**
   * @param ways of reading, the first one chosen at first
   * @param later when what belongs to the way chosen is put in
   */
  public SwatchesView(
      PictureModel pictures, List<ReadingWay> ways, Dialogs dialogs, Executor later) {
    this.pictures = pictures;
    this.ways = List.copyOf(ways);
    this.dialogs = dialogs;
    this.later = later;
    marks = ways.get(0).marks();
    desk = new PictureDesk(pictures, marks);
    getStyleClass().add("swatches-view");
    getChildren().setAll(pictureSide(), side());
    choose(ways.get(0));
  }

  private VBox pictureSide() {
    empty.setMaxWidth(420);
    empty.setMouseTransparent(true);
    empty.visibleProperty().bind(pictures.pictureProperty().map(Optional::isEmpty));
    hint.visibleProperty().bind(pictures.pictureProperty().map(Optional::isPresent));
    hint.managedProperty().bind(hint.visibleProperty());
    StackPane ground = new StackPane(desk, empty);
    ground.getStyleClass().add("swatch-ground");
    VBox.setVgrow(ground, Priority.ALWAYS);
    VBox left = new VBox(ground, hint);
    HBox.setHgrow(left, Priority.ALWAYS);
    return left;
  }

  private VBox side() {
    Label title = new Label(SwatchesWords.NAME);
    title.getStyleClass().add("title");
    head.getChildren().setAll(title, choice(), purpose, opening(), problem());
    VBox all = new VBox(12, head, content);
    all.getStyleClass().add("swatches-side");
    ScrollPane scroll = new ScrollPane(all);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    foot.getStyleClass().add("swatches-foot");
    VBox side = new VBox(scroll, foot);
    side.setMinWidth(SIDE);
    side.setPrefWidth(SIDE);
    side.setMaxWidth(SIDE);
    return side;
  }

  private HBox choice() {
    List<ToggleButton> buttons = new ArrayList<>();
    for (ReadingWay way : ways) {
      ToggleButton button = new ToggleButton(way.words().name());
      button.setToggleGroup(group);
      button.setMinWidth(Region.USE_PREF_SIZE);
      button.setOnAction(event -> choose(way));
      buttons.add(button);
    }
    buttons.get(0).getStyleClass().add("first");
    buttons.get(buttons.size() - 1).getStyleClass().add("last");
    HBox strip = new HBox();
    strip.getStyleClass().addAll("joined", "reading-ways");
    strip.setAccessibleText(SwatchesWords.WAYS);
    strip.getChildren().setAll(buttons);
    return strip;
  }

  private VBox opening() {
    Button open = new Button(SwatchesWords.OPEN);
    open.getStyleClass().add("primary");
    open.setOnAction(
        event -> dialogs.chooseToOpen(PICTURE, Optional.empty()).ifPresent(pictures::open));
    ProgressBar bar = new ProgressBar();
    bar.progressProperty().bind(pictures.progressProperty());
    Button stop = new Button(SwatchesWords.STOP);
    stop.setOnAction(event -> pictures.stop());
    HBox reading = new HBox(8, new Label(SwatchesWords.READING), bar, stop);
    reading.setAlignment(Pos.CENTER_LEFT);
    reading
        .visibleProperty()
        .bind(pictures.progressProperty().map(p -> p.doubleValue() != PictureModel.IDLE));
    reading.managedProperty().bind(reading.visibleProperty());
    return new VBox(8, open, reading);
  }

  private Label problem() {
    Label problem = Sentence.whileSaid("warn");
    problem.setId("picture-problem");
    problem.textProperty().bind(pictures.problemProperty());
    return problem;
  }

  /**
   * Reads a picture.
   *
   * @param opened done once it is shown; never if it cannot be read
   */
  public void open(Path file, Runnable opened) {
    pictures.pictureProperty().addListener(new Once(opened));
    pictures.open(file);
  }

  /** Listens to one change only. */
  private record Once(Runnable then) implements ChangeListener<Optional<ShownPicture>> {
    @Override
    public void changed(
        ObservableValue<? extends Optional<ShownPicture>> property,
        Optional<ShownPicture> before,
        Optional<ShownPicture> now) {
      property.removeListener(this);
      then.run();
    }
  }

  /** Reads swatches in another way, by its name. */
  public void choose(String name) {
    ways.stream()
        .filter(way -> way.words().name().equals(name))
        .findFirst()
        .ifPresent(this::choose);
  }

  /** The marks of the way chosen. */
  public PictureMarks marks() {
    return marks;
  }

  @Override
  public List<Node> parts() {
    return List.of(desk, head, content, foot);
  }

  private void choose(ReadingWay chosen) {
    marks = chosen.marks();
    if (seen.add(chosen)) {
      marks.whenChanged(desk::repaint);
    }
    group.getToggles().get(ways.indexOf(chosen)).setSelected(true);
    purpose.setText(chosen.words().purpose());
    empty.setText(chosen.words().empty());
    hint.setText(chosen.words().hint());
    later.execute(
        () -> {
          if (marks.equals(chosen.marks())) {
            content.getChildren().setAll(chosen.content());
          }
        });
    foot.getChildren().setAll(chosen.foot());
    desk.show(chosen.marks());
    ways.forEach(way -> way.setChosen(way == chosen));
  }
}
