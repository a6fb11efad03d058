package org.panwright.app.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.fx.BuiltLater;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Parted;
import org.panwright.app.fx.Sentence;
import org.panwright.paint.FormerOptics;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Paint;
import org.panwright.words.PaintPageWords;
import org.panwright.words.PaintWords;

/** The page of a paint: swatches on the left, curves and history on the right. */
public final class PageView extends HBox implements Parted {
  private static final double COLUMN = 640;

  private final PageModel model;
  private final ComboBox<Paint> chooser = new ComboBox<>();
  private final Label codes = Sentence.of("");
  private final Label badge = new Label();
  private final Label trust = Sentence.of("");
  private final Label remark = Sentence.of("");
  private final Button takeLoad = new Button();
  private final Label sides = Sentence.of(PaintPageWords.SIDES);
  private final VBox coats = new VBox();
  private final Button learn = new Button(PaintPageWords.LEARN);
  private final CurvePlot reflectance = new CurvePlot(false);
  private final CurvePlot constants = new CurvePlot(true);
  private final ResidualBars bars = new ResidualBars();
  private final VBox residuals = part(PaintPageWords.RESIDUALS, bars);
  private final Label sheen = Sentence.of("", "soft");
  private final VBox history = new VBox();
  private final VBox known;
  private final BuiltLater right;
  private boolean showing;

  /**
   * @param later when the curves and the history are put in
   */
  public PageView(PageModel model, Dialogs dialogs, Executor later) {
    this.model = model;
    getStyleClass().add("paint-page");
    PageDialogs questions = new PageDialogs(model, dialogs);
    chooser.setConverter(new ByLabel<>(Paint::name));
    chooser.setAccessibleText(PaintPageWords.CHOOSE);
    chooser.setMaxWidth(Double.MAX_VALUE);
    chooser.setVisibleRowCount(16);
    chooser
        .valueProperty()
        .addListener(
            (property, before, now) -> {
              if (!showing && now != null) {
                model.choose(now.id());
              }
            });
    badge.getStyleClass().add("badge");
    badge.setMinWidth(Region.USE_PREF_SIZE);
    codes.getStyleClass().add("soft");
    remark.getStyleClass().add("remark");
    remark.textProperty().bind(model.remarkProperty());
    remark.managedProperty().bind(model.remarkProperty().isNotEmpty());
    takeLoad.setId("take-load");
    takeLoad.setOnAction(
        event -> {
          // The button goes; the keyboard must not fall to the next one, which removes a swatch.
          learn.requestFocus();
          model.takeLoad();
        });
    takeLoad
        .textProperty()
        .bind(
            model
                .doubtedProperty()
                .map(found -> found.map(d -> PaintPageWords.takeLoad(d.load())).orElse("")));
    takeLoad.visibleProperty().bind(takeLoad.textProperty().isNotEmpty());
    takeLoad.managedProperty().bind(takeLoad.visibleProperty());
    Button type = new Button(PaintPageWords.TYPE);
    type.setOnAction(event -> questions.type());
    Button load = new Button(PaintPageWords.LOAD);
    load.setOnAction(event -> questions.load());
    learn.getStyleClass().add("primary");
    learn.setOnAction(event -> model.learn());
    HBox buttons = new HBox(8, learn, type, load);
    for (Node button : buttons.getChildren()) {
      ((Region) button).setMinWidth(Region.USE_PREF_SIZE);
    }
    coats.getStyleClass().add("coat-list");
    history.getStyleClass().add("history");
    HBox source = new HBox(8, badge, codes);
    source.setAlignment(Pos.CENTER_LEFT);
    sides.getStyleClass().addAll("soft", "small");
    known = new VBox(12, heading(PaintPageWords.SWATCHES), buttons, remark, takeLoad, sides, coats);
    source.visibleProperty().bind(known.visibleProperty());
    source.managedProperty().bind(known.visibleProperty());
    VBox left = new VBox(12, chooser, source, trust, known);
    right = new BuiltLater(later, () -> column(right()));
    right.setPrefWidth(COLUMN);
    HBox.setHgrow(right, Priority.ALWAYS);
    getChildren().setAll(column(left), right);
    model.pageProperty().addListener((property, before, now) -> show(now));
    show(model.pageProperty().get());
  }

  @Override
  public List<Node> parts() {
    return List.copyOf(getChildren());
  }

  private VBox right() {
    return new VBox(
        16,
        part(PaintPageWords.CURVES, reflectance, sheen),
        part(PaintPageWords.ABSORPTION, constants),
        residuals,
        part(PaintPageWords.HISTORY, history));
  }

  private void show(Optional<PaintPage> page) {
    showing = true;
    if (!chooser.getItems().equals(model.paints())) {
      chooser.getItems().setAll(model.paints());
    }
    chooser.setValue(page.map(PaintPage::paint).orElse(null));
    chooser.setDisable(model.paints().isEmpty());
    showing = false;
    learn.setDisable(page.map(p -> p.coats().isEmpty()).orElse(true));
    known.setVisible(page.isPresent());
    right.setVisible(page.isPresent());
    if (page.isEmpty()) {
      trust.setText(model.paints().isEmpty() ? PaintPageWords.EMPTY_SHELF : "");
      coats.getChildren().clear();
      history.getChildren().clear();
      return;
    }
    show(page.get());
  }

  private void show(PaintPage page) {
    badge.setText(PaintWords.badge(page.optics().source()));
    codes.setText(page.paint().codes());
    trust.setText(
        PaintPageWords.trust(
            PaintWords.explain(page.optics().source(), page.optics().expectedError()),
            page.paint().swatchbook().dryingShift()));
    coats
        .getChildren()
        .setAll(
            page.coats().isEmpty()
                ? List.of(Sentence.of(PaintPageWords.NO_SWATCHES))
                : page.coats().stream()
                    .map(line -> new CoatRow(line, () -> model.remove(line.coat().id())))
                    .toList());
    sheen.setText(PaintPageWords.sheen(page.optics().gloss()));
    sheen.setVisible(!sheen.getText().isEmpty());
    sheen.setManaged(sheen.isVisible());
    PaintPage.Curves curves = page.curves();
    reflectance.show(
        List.of(
            new CurvePlot.Curve(PaintPageWords.FULL, curves.full()),
            new CurvePlot.Curve(PaintPageWords.WASH, curves.wash()),
            new CurvePlot.Curve(PaintPageWords.ON_BLACK, curves.fullOnBlack()),
            new CurvePlot.Curve(PaintPageWords.WASH_ON_BLACK, curves.washOnBlack())));
    constants.show(
        List.of(
            new CurvePlot.Curve("K", page.optics().absorption()),
            new CurvePlot.Curve("S", page.optics().scattering())));
    List<ResidualBars.Bar> shown = new ArrayList<>();
    for (PaintPage.Line line : page.coats()) {
      line.fit()
          .ifPresent(
              fit ->
                  shown.add(
                      new ResidualBars.Bar(PaintPageWords.coat(line.coat()), fit.ciede2000())));
    }
    bars.show(shown);
    sides.setVisible(!page.coats().isEmpty());
    sides.setManaged(!page.coats().isEmpty());
    residuals.setVisible(!shown.isEmpty());
    residuals.setManaged(!shown.isEmpty());
    history.getChildren().setAll(historyLines(page));
  }

  private List<Node> historyLines(PaintPage page) {
    List<Node> lines = new ArrayList<>();
    lines.add(
        line(page.optics().source(), PaintPageWords.origin(page.origin()), PaintPageWords.IN_USE));
    List<FormerOptics> former = page.paint().swatchbook().former();
    for (int i = former.size() - 1; i >= 0; i--) {
      int place = i;
      FormerOptics before = former.get(i);
      HBox line =
          line(
              before.optics().map(o -> o.source()).orElse(OpticsSource.PIGMENTS),
              PaintPageWords.origin(before.origin()),
              "");
      Button back = new Button(PaintPageWords.GO_BACK);
      back.setMinWidth(Region.USE_PREF_SIZE);
      back.setDisable(!page.canGoBackTo(before));
      back.setOnAction(event -> model.goBack(place));
      line.getChildren().add(back);
      lines.add(line);
    }
    return lines;
  }

  private static HBox line(OpticsSource source, String words, String mark) {
    Label where = new Label(PaintWords.badge(source));
    where.getStyleClass().add("badge");
    where.setMinWidth(Region.USE_PREF_SIZE);
    Label text = Sentence.of(mark.isEmpty() ? words : words + " — " + mark);
    text.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(text, Priority.ALWAYS);
    HBox line = new HBox(8, where, text);
    line.setAlignment(Pos.CENTER_LEFT);
    return line;
  }

  private static ScrollPane column(VBox content) {
    content.getStyleClass().add("page-column");
    ScrollPane scroll = new ScrollPane(content);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("edge-to-edge");
    scroll.setPrefWidth(COLUMN);
    HBox.setHgrow(scroll, Priority.ALWAYS);
    return scroll;
  }

  private static Label heading(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("part-heading");
    return label;
  }

  private static VBox part(String title, Node... content) {
    VBox part = new VBox(heading(title));
    part.getChildren().addAll(content);
    part.getStyleClass().add("part");
    return part;
  }
}
