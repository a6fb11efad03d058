package org.panwright.app.boxes;

import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.panwright.app.fx.CanvasRegion;
import org.panwright.kit.FixtureKind;
import org.panwright.kit.WellKind;
import org.panwright.words.BoxEditorWords;

/**
 * The box to scale, its lid above it; wells and parts are drawn, picked and moved by hand or keys.
 */
final class BoxSketch extends CanvasRegion {
  private static final double STEP_MM = 1;
  private static final double LONG_STEP_MM = 5;
  private static final double FINE_STEP_MM = 0.1;
  private static final double LEAST_DRAWN_MM = 4;

  private final BoxEditorModel model;
  private SketchPlace place;
  private Optional<double[]> drawnFrom = Optional.empty();
  private double drawnToX;
  private double drawnToY;
  private double grabbedXMm;
  private double grabbedYMm;

  BoxSketch(BoxEditorModel model) {
    this.model = model;
    place = SketchPlace.of(model.draft(), 1, 1);
    setFocusTraversable(true);
    setAccessibleText(BoxEditorWords.DRAWING);
    setMinSize(380, 220);
    setPrefSize(560, 330);
    model.draftProperty().addListener(changed -> repaint());
    model.pickedProperty().addListener(changed -> pickedAnew());
    model.pickedPartProperty().addListener(changed -> pickedAnew());
    focusedProperty().addListener(changed -> repaint());
    setOnMousePressed(this::press);
    setOnMouseDragged(this::drag);
    setOnMouseReleased(this::release);
    setOnKeyPressed(this::key);
  }

  private void pickedAnew() {
    setAccessibleText(
        model
            .pickedWell()
            .map(well -> BoxEditorWords.well(well.label(), well.kind()))
            .or(() -> model.pickedPart().map(part -> BoxEditorWords.part(part.kind())))
            .orElse(BoxEditorWords.DRAWING));
    repaint();
  }

  @Override
  protected void paint(GraphicsContext pen, double width, double height) {
    BoxDraft box = model.draft();
    if (!(box.widthMm() > 0 && box.heightMm() > 0)) {
      return;
    }
    place = SketchPlace.of(box, width, height);
    pen.setTextAlign(TextAlignment.CENTER);
    pen.setTextBaseline(VPos.CENTER);
    if (place.hasLid()) {
      tray(pen, place.lidLeftPx(), place.lidTopPx(), box.lidWidthMm(), box.lidHeightMm(), false);
    }
    tray(pen, place.leftPx(), place.topPx(), box.widthMm(), box.heightMm(), isFocused());
    pen.setFill(soft());
    pen.fillText(BoxEditorWords.HINGE, width / 2, place.topPx() - 10);
    double below = place.topPx() + box.heightMm() * place.scale() + 11;
    pen.fillText(BoxEditorWords.FRONT, width / 2, below);
    box.parts().forEach(part -> paint(pen, part));
    box.wells().forEach(well -> paint(pen, well));
    drawnFrom.ifPresent(from -> paintDrawn(pen, from));
  }

  private void tray(
      GraphicsContext pen, double left, double top, double width, double height, boolean focused) {
    pen.setFill(surround());
    pen.fillRoundRect(left, top, width * place.scale(), height * place.scale(), 10, 10);
    pen.setStroke(focused ? accent() : line());
    pen.setLineWidth(focused ? 2 : 1);
    pen.strokeRoundRect(left, top, width * place.scale(), height * place.scale(), 10, 10);
  }

  private void paint(GraphicsContext pen, PartDraft part) {
    double x = place.leftPx(part.inLid()) + part.xMm() * place.scale();
    double y = place.topPx(part.inLid()) + part.yMm() * place.scale();
    double w = part.widthMm() * place.scale();
    double h = part.heightMm() * place.scale();
    boolean picked = model.pickedPartProperty().get().equals(Optional.of(part.id()));
    boolean wrong = model.draft().partProblem(part).isPresent();
    double round = part.kind() == FixtureKind.MIXING_AREA ? 12 : 2;
    pen.setFill(
        part.kind() == FixtureKind.MIXING_AREA ? wellGround() : line().deriveColor(0, 1, 1, 0.35));
    pen.fillRoundRect(x, y, w, h, round, round);
    pen.setStroke(wrong ? warn() : picked ? accent() : line());
    pen.setLineWidth(wrong || picked ? 2.5 : 1);
    pen.setLineDashes(part.kind() == FixtureKind.MIXING_AREA ? 0 : 4);
    pen.strokeRoundRect(x, y, w, h, round, round);
    pen.setLineDashes(0);
    boolean covered =
        !part.inLid()
            && part.isSized()
            && model.draft().wells().stream()
                .anyMatch(
                    well ->
                        model.draft().wellProblem(well).isEmpty()
                            && part.toFixture().isUnder(well.toWell()));
    if (h > 16 && !covered) {
      pen.setFill(soft());
      pen.fillText(BoxEditorWords.part(part.kind()), x + w / 2, y + h / 2, Math.max(4, w - 4));
    }
  }

  private void paint(GraphicsContext pen, WellDraft well) {
    double x = place.leftPx() + well.xMm() * place.scale();
    double y = place.topPx() + well.yMm() * place.scale();
    double w = well.widthMm() * place.scale();
    double h = well.heightMm() * place.scale();
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

  private void paintDrawn(GraphicsContext pen, double[] from) {
    pen.setStroke(accent());
    pen.setLineWidth(2);
    pen.strokeRect(
        place.leftPx() + Math.min(from[0], drawnToX) * place.scale(),
        place.topPx() + Math.min(from[1], drawnToY) * place.scale(),
        Math.abs(drawnToX - from[0]) * place.scale(),
        Math.abs(drawnToY - from[1]) * place.scale());
  }

  /** Lighter than the ground under dark text, darker than it under light text. */
  private Color wellGround() {
    return surround().interpolate(text().getBrightness() > 0.5 ? Color.BLACK : Color.WHITE, 0.6);
  }

  private void press(MouseEvent event) {
    requestFocus();
    double x = place.xMm(canvasX(event.getX()), false);
    double y = place.yMm(canvasY(event.getY()), false);
    drawnFrom = Optional.empty();
    Optional<WellDraft> well =
        model.draft().wells().stream().filter(it -> it.holds(x, y)).reduce((below, above) -> above);
    Optional<PartDraft> part =
        well.isPresent()
            ? Optional.empty()
            : model.draft().parts().stream()
                .filter(
                    it ->
                        it.holds(
                            place.xMm(canvasX(event.getX()), it.inLid()),
                            place.yMm(canvasY(event.getY()), it.inLid())))
                .reduce((below, above) -> above);
    model.pickedProperty().set(well.map(WellDraft::id));
    model.pickedPartProperty().set(part.map(PartDraft::id));
    well.ifPresent(it -> grab(x - it.xMm(), y - it.yMm()));
    part.ifPresent(
        it ->
            grab(
                place.xMm(canvasX(event.getX()), it.inLid()) - it.xMm(),
                place.yMm(canvasY(event.getY()), it.inLid()) - it.yMm()));
    if (well.isEmpty() && part.isEmpty() && place.holds(x, y, model.draft())) {
      drawnFrom = Optional.of(new double[] {Math.rint(x), Math.rint(y)});
      drawnToX = Math.rint(x);
      drawnToY = Math.rint(y);
    }
    model.beginStep();
  }

  private void grab(double xMm, double yMm) {
    grabbedXMm = xMm;
    grabbedYMm = yMm;
  }

  private void drag(MouseEvent event) {
    boolean inLid = model.pickedPart().map(PartDraft::inLid).orElse(false);
    double x = place.xMm(canvasX(event.getX()), inLid);
    double y = place.yMm(canvasY(event.getY()), inLid);
    if (drawnFrom.isPresent()) {
      drawnToX = Math.max(0, Math.min(model.draft().widthMm(), Math.rint(2 * x) / 2));
      drawnToY = Math.max(0, Math.min(model.draft().heightMm(), Math.rint(2 * y) / 2));
      repaint();
    } else {
      model.moveTo(x - grabbedXMm, y - grabbedYMm);
    }
  }

  private void release(MouseEvent event) {
    drawnFrom.ifPresent(
        from -> {
          double w = Math.abs(drawnToX - from[0]);
          double h = Math.abs(drawnToY - from[1]);
          if (w >= LEAST_DRAWN_MM && h >= LEAST_DRAWN_MM) {
            model.drawWell(Math.min(from[0], drawnToX), Math.min(from[1], drawnToY), w, h);
          }
        });
    drawnFrom = Optional.empty();
    model.endStep();
    repaint();
  }

  private void key(KeyEvent event) {
    double step = event.isShiftDown() ? LONG_STEP_MM : event.isAltDown() ? FINE_STEP_MM : STEP_MM;
    switch (event.getCode()) {
      case LEFT -> move(-step, 0);
      case RIGHT -> move(step, 0);
      case UP -> move(0, -step);
      case DOWN -> move(0, step);
      case PAGE_DOWN -> model.step(1);
      case PAGE_UP -> model.step(-1);
      case DELETE -> model.removePicked();
      case INSERT -> model.addWell();
      case Z -> {
        if (!event.isShortcutDown()) {
          return;
        }
        if (event.isShiftDown()) {
          model.redo();
        } else {
          model.undo();
        }
      }
      case Y -> {
        if (!event.isShortcutDown()) {
          return;
        }
        model.redo();
      }
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void move(double dxMm, double dyMm) {
    if (model.pickedWell().isEmpty() && model.pickedPart().isEmpty()) {
      model.step(1);
    } else {
      model.moveBy(dxMm, dyMm);
    }
  }
}
