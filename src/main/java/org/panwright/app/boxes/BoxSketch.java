package org.panwright.app.boxes;

import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.kit.WellKind;
import org.panwright.words.BoxEditorWords;

/** The box to scale; wells are picked and moved by mouse or keys. */
final class BoxSketch extends CanvasRegion {
  private static final double MARGIN_PX = 26;
  private static final double STEP_MM = 1;
  private static final double LONG_STEP_MM = 5;

  private final BoxEditorModel model;
  private double grabbedXMm;
  private double grabbedYMm;

  BoxSketch(BoxEditorModel model) {
    this.model = model;
    setFocusTraversable(true);
    setAccessibleText(BoxEditorWords.DRAWING);
    setMinSize(380, 240);
    setPrefSize(560, 330);
    model.draftProperty().addListener(changed -> repaint());
    model.pickedProperty().addListener(changed -> pickedAnew());
    focusedProperty().addListener(changed -> repaint());
    setOnMousePressed(this::press);
    setOnMouseDragged(this::drag);
    setOnKeyPressed(this::key);
  }

  private void pickedAnew() {
    setAccessibleText(
        model
            .pickedWell()
            .map(well -> BoxEditorWords.well(well.label(), well.kind()))
            .orElse(BoxEditorWords.DRAWING));
    repaint();
  }

  private double scale() {
    BoxDraft box = model.draft();
    double scale =
        Math.min(
            (getWidth() - 2 * MARGIN_PX) / box.widthMm(),
            (getHeight() - 2 * MARGIN_PX) / box.heightMm());
    return Double.isFinite(scale) && scale > 0 ? scale : 1;
  }

  private double leftPx() {
    return (getWidth() - model.draft().widthMm() * scale()) / 2;
  }

  private double topPx() {
    return (getHeight() - model.draft().heightMm() * scale()) / 2;
  }

  @Override
  protected void paint(GraphicsContext pen, double width, double height) {
    BoxDraft box = model.draft();
    if (!(box.widthMm() > 0 && box.heightMm() > 0)) {
      return;
    }
    double scale = scale();
    double left = leftPx();
    double top = topPx();
    pen.setFill(surround());
    pen.fillRoundRect(left, top, box.widthMm() * scale, box.heightMm() * scale, 10, 10);
    pen.setStroke(isFocused() ? accent() : line());
    pen.setLineWidth(isFocused() ? 2 : 1);
    pen.strokeRoundRect(left, top, box.widthMm() * scale, box.heightMm() * scale, 10, 10);
    pen.setTextAlign(TextAlignment.CENTER);
    pen.setTextBaseline(VPos.CENTER);
    pen.setFill(soft());
    pen.fillText(BoxEditorWords.HINGE, width / 2, top - 11);
    pen.fillText(BoxEditorWords.FRONT, width / 2, top + box.heightMm() * scale + 12);
    for (WellDraft well : box.wells()) {
      paint(pen, well, left, top, scale);
    }
  }

  private void paint(GraphicsContext pen, WellDraft well, double left, double top, double scale) {
    double x = left + well.xMm() * scale;
    double y = top + well.yMm() * scale;
    double w = well.widthMm() * scale;
    double h = well.heightMm() * scale;
    double round = well.kind() == WellKind.DAB ? Math.min(w, h) : 5;
    boolean wrong = model.draft().wellProblem(well).isPresent();
    boolean picked = model.pickedProperty().get().equals(Optional.of(well.id()));
    pen.setFill(wellGround());
    pen.fillRoundRect(x, y, w, h, round, round);
    pen.setStroke(wrong ? warn() : picked ? accent() : line());
    pen.setLineWidth(wrong || picked ? 2.5 : 1);
    pen.strokeRoundRect(x, y, w, h, round, round);
    pen.setFill(wrong ? warn() : text());
    pen.fillText(well.label(), x + w / 2, y + h / 2, Math.max(4, w - 4));
  }

  /** Lighter than the ground under dark text, darker than it under light text. */
  private Color wellGround() {
    return surround().interpolate(text().getBrightness() > 0.5 ? Color.BLACK : Color.WHITE, 0.6);
  }

  private void press(MouseEvent event) {
    requestFocus();
    double x = (event.getX() - leftPx()) / scale();
    double y = (event.getY() - topPx()) / scale();
    List<WellDraft> wells = model.draft().wells();
    Optional<WellDraft> hit =
        wells.stream().filter(well -> well.holds(x, y)).reduce((below, above) -> above);
    model.pickedProperty().set(hit.map(WellDraft::id));
    hit.ifPresent(
        well -> {
          grabbedXMm = x - well.xMm();
          grabbedYMm = y - well.yMm();
        });
  }

  private void drag(MouseEvent event) {
    double x = (event.getX() - leftPx()) / scale() - grabbedXMm;
    double y = (event.getY() - topPx()) / scale() - grabbedYMm;
    model.changePicked(well -> well.at(Math.rint(x / STEP_MM), Math.rint(y / STEP_MM)));
  }

  private void key(KeyEvent event) {
    double step = event.isShiftDown() ? LONG_STEP_MM : STEP_MM;
    switch (event.getCode()) {
      case LEFT -> move(-step, 0);
      case RIGHT -> move(step, 0);
      case UP -> move(0, -step);
      case DOWN -> move(0, step);
      case PAGE_DOWN -> model.step(1);
      case PAGE_UP -> model.step(-1);
      case DELETE -> model.removePicked();
      case INSERT -> model.addWell();
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void move(double dxMm, double dyMm) {
    if (model.pickedWell().isEmpty()) {
      model.step(1);
    } else {
      model.changePicked(well -> well.at(well.xMm() + dxMm, well.yMm() + dyMm));
    }
  }
}
