package org.panwright.app.box;

import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.text.TextAlignment;
import org.panwright.app.chip.ChipInk;
import org.panwright.app.fx.LateTip;
import org.panwright.paint.Paint;
import org.panwright.words.BoxWords;

/**
 * One well: the paint as it dries from masstone to wash, beneath it a plate with name and codes,
 * and in the corners the well's label and the fill.
 */
final class WellView extends Region {
  private static final PseudoClass EMPTY = PseudoClass.getPseudoClass("empty");
  private static final PseudoClass PICKED = PseudoClass.getPseudoClass("picked");
  private static final PseudoClass RELATED = PseudoClass.getPseudoClass("related");
  private static final PseudoClass LIFTED = PseudoClass.getPseudoClass("lifted");
  private static final PseudoClass TARGET = PseudoClass.getPseudoClass("target");
  private static final PseudoClass WAITING = PseudoClass.getPseudoClass("waiting");

  private static final PseudoClass TIGHT = PseudoClass.getPseudoClass("tight");
  private static final PseudoClass LONG = PseudoClass.getPseudoClass("long");
  private static final int SHORT_LABEL = 3;

  /** In a well narrower than this its label is set small, to leave the paint in sight. */
  private static final double NARROW_EM = 2.7;

  /** The share of the height the plate may take; the pan keeps its least height. */
  private static final double PLATE_SHARE = 0.7;

  private static final double SMALLEST_PAN_PX = 16;
  private static final double PLATE_AIR = 0.16;
  private static final double VACANT_WIDE = 2.9;
  private static final double VACANT_HIGH = 3;
  private static final double LARGEST_NAME = 1.1;
  private static final double SMALLEST_NAME = 0.85;
  private static final NameFit NONE = new NameFit(1, List.of(), List.of());

  private final ChipInk ink;
  private final TextWidths widths;
  private final Region pan = new Region();
  private final Region beyond = new Region();
  private final Region plate = new Region();
  private final Label number = new Label();
  private final Label name = new Label();
  private final Label codes = new Label();
  private final Label vacant = new Label(BoxWords.EMPTY);
  private final FillMark mark = new FillMark();
  private WellPicture shown;
  private NameFit fit = NONE;
  private double plateHeight;
  private boolean isRoomy;

  WellView(WellPicture first, ChipInk ink, TextWidths widths) {
    this.ink = ink;
    this.widths = widths;
    getStyleClass().add("well");
    pan.getStyleClass().add("pan");
    beyond.getStyleClass().add("beyond-screen");
    plate.getStyleClass().add("plate");
    number.getStyleClass().add("well-label");
    name.getStyleClass().add("well-name");
    codes.getStyleClass().addAll("well-codes", "soft");
    vacant.getStyleClass().addAll("well-vacant", "soft");
    for (Label label : new Label[] {name, codes, vacant}) {
      label.setAlignment(Pos.CENTER);
      label.setTextAlignment(TextAlignment.CENTER);
      label.setMouseTransparent(true);
    }
    getChildren().addAll(pan, beyond, plate, name, codes, vacant, number, mark);
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleRoleDescription(BoxWords.WELL);
    LateTip.on(this, () -> shown.explained());
    show(first);
  }

  String wellId() {
    return shown.well().id();
  }

  WellPicture shown() {
    return shown;
  }

  /** Shows what is in the well. */
  void show(WellPicture picture) {
    if (picture.equals(shown)) {
      return;
    }
    shown = picture;
    boolean isFull = picture.content().isPresent();
    number.setText(picture.well().label());
    number.pseudoClassStateChanged(LONG, picture.well().label().length() > SHORT_LABEL);
    pan.setBackground(picture.content().map(c -> ink.of(c.tones())).orElse(null));
    beyond.setVisible(picture.content().filter(c -> !c.tones().isExact()).isPresent());
    picture.content().ifPresent(c -> mark.show(c.fill()));
    pseudoClassStateChanged(EMPTY, !isFull);
    setAccessibleText(picture.spoken());
    requestLayout();
  }

  /** Shows how it stands to what is picked. */
  void mark(boolean isPicked, boolean isRelated) {
    pseudoClassStateChanged(PICKED, isPicked);
    pseudoClassStateChanged(RELATED, isRelated);
  }

  /**
   * Shows its part in what is being carried.
   *
   * @param isCarrying whether anything is held
   * @param promise what putting down here would bring, if it hovers here
   */
  void carry(boolean isCarrying, boolean isLifted, Optional<String> promise) {
    pseudoClassStateChanged(WAITING, isCarrying);
    pseudoClassStateChanged(LIFTED, isLifted);
    pseudoClassStateChanged(TARGET, promise.isPresent());
    setAccessibleText(
        promise.map(p -> BoxWords.spokenTarget(shown.spoken(), p)).orElseGet(shown::spoken));
  }

  /**
   * Sets name and codes for a size of the well, in whole pixels of it: what snapping adds to some
   * wells of one size must not make them look other than their neighbours.
   *
   * @return the height of the plate they need, 0 if none; wells of one size share the largest
   */
  double plateFor(double widthPx, double heightPx) {
    double em = vacant.getFont().getSize();
    double width = Math.floor(widthPx) - snappedLeftInset() - snappedRightInset() - em * 0.3;
    double height = Math.floor(heightPx) - snappedTopInset() - snappedBottomInset();
    isRoomy = width > em * VACANT_WIDE && height > em * VACANT_HIGH;
    double room = Math.min(height * PLATE_SHARE, height - SMALLEST_PAN_PX) - em * PLATE_AIR;
    fit = room > 0 ? shown.content().map(c -> fit(c.paint(), width, room, em)).orElse(NONE) : NONE;
    return fit.heightPx() == 0 ? 0 : Math.ceil(fit.heightPx() + em * PLATE_AIR);
  }

  /** Gives the plate its height; with none, name and codes are not shown. */
  void setPlate(double heightPx) {
    plateHeight = heightPx;
    fit = heightPx == 0 ? NONE : fit;
    requestLayout();
  }

  @Override
  protected void layoutChildren() {
    double left = snappedLeftInset();
    double top = snappedTopInset();
    double width = Math.max(0, getWidth() - left - snappedRightInset());
    double height = Math.max(0, getHeight() - top - snappedBottomInset());
    double em = vacant.getFont().getSize();
    double panHeight = height - (shown.content().isPresent() ? plateHeight : 0);
    pan.resizeRelocate(left, top, width, panHeight);
    beyond.resizeRelocate(left + width - em * 0.7, top + panHeight - em * 0.7, em * 0.7, em * 0.7);
    layoutNumber(left, top, width, panHeight, em);
    layoutMark(left, top, width, em);
    plate.setVisible(panHeight < height);
    plate.resizeRelocate(left, top + panHeight, width, height - panHeight);
    layoutPlate(left, top + panHeight, width, em);
    vacant.setVisible(shown.content().isEmpty() && isRoomy);
    vacant.resizeRelocate(left, top + height / 2 - em * 0.7, width, em * 1.4);
  }

  private NameFit fit(Paint paint, double width, double room, double em) {
    return NameFit.of(
        paint.name(),
        paint.codes(),
        width,
        room,
        em * LARGEST_NAME,
        em * SMALLEST_NAME,
        widths::of);
  }

  private void layoutNumber(double left, double top, double width, double height, double em) {
    number.pseudoClassStateChanged(TIGHT, false);
    number.applyCss();
    if (number.prefWidth(-1) > width || width < NARROW_EM * em) {
      number.pseudoClassStateChanged(TIGHT, true);
      number.applyCss();
    }
    double wide = Math.min(width, snapSizeX(number.prefWidth(-1)));
    double high = Math.min(height, snapSizeY(number.prefHeight(-1)));
    number.resizeRelocate(left, top, wide, high);
  }

  private void layoutMark(double left, double top, double width, double em) {
    double wide = snapSizeX(em * 1.4);
    double high = snapSizeY(em * 1.15);
    boolean fits = width >= NARROW_EM * em && width - number.getWidth() > wide + 2;
    mark.setVisible(shown.content().isPresent() && fits);
    mark.resizeRelocate(snapPositionX(left + width - wide), top, wide, high);
  }

  private void layoutPlate(double left, double top, double width, double em) {
    double air = Math.max(0, plateHeight - fit.heightPx()) / 2;
    double nameHeight = fit.name().size() * fit.sizePx() * NameFit.LINE;
    double codesSize = fit.sizePx() * NameFit.CODES;
    double codesHeight = fit.codes().size() * codesSize * NameFit.LINE;
    set(name, fit.name(), fit.sizePx());
    set(codes, fit.codes(), codesSize);
    double nameTop = top + Math.min(air, em * PLATE_AIR);
    name.resizeRelocate(left, nameTop, width, Math.ceil(nameHeight));
    codes.resizeRelocate(left, nameTop + nameHeight, width, Math.ceil(codesHeight));
  }

  private static void set(Label label, List<String> lines, double sizePx) {
    label.setVisible(!lines.isEmpty());
    label.setText(String.join("\n", lines));
    String style = "-fx-font-size: " + sizePx + "px;";
    if (!style.equals(label.getStyle())) {
      label.setStyle(style);
    }
  }
}
