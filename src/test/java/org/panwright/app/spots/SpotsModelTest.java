package org.panwright.app.spots;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.swatches.Learning;
import org.panwright.app.swatches.PictureModel;
import org.panwright.colour.Difference;
import org.panwright.colour.Light;
import org.panwright.kit.Kit;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.Shelf;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.swatch.coat.PaintLoad;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.picture.Zone;
import org.panwright.swatch.sheet.InventedShelf;
import org.panwright.swatch.sheet.PaintedPage;
import org.panwright.swatch.sheet.SheetFormat;
import org.panwright.swatch.sheet.Sheets;
import org.panwright.swatch.sheet.SimulatedCamera;
import org.panwright.swatch.spot.Spot;
import org.panwright.swatch.spot.SpotKind;

/** Spots placed by hand on a photo of painted patches, in the model of the view. */
class SpotsModelTest {
  private static final LocalDate DAY = LocalDate.of(2026, 11, 29);
  private static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();
  private static final SimulatedCamera CAMERA = SimulatedCamera.phone(900, 1270);

  @TempDir static Path folder;
  private static Path photo;
  private static Homography camera;
  private Session session;
  private SpotsModel spots;

  @BeforeAll
  static void takePhoto() {
    PaintedPage page = Sheets.painted(SheetFormat.A4, List.of("white", "black", "earth"));
    camera = CAMERA.place(page);
    photo = CAMERA.save(page, folder.resolve("table.jpg"));
  }

  @BeforeEach
  void open() {
    session = Sessions.on(Kit.empty("invented").withShelf(new Shelf(InventedShelf.paints())));
    PictureModel pictures = new PictureModel(Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail);
    Learning learning =
        new Learning(
            session, LIBRARY, () -> DAY, Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail);
    spots =
        new SpotsModel(
            session, pictures, learning, Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail);
    spots.setChosen(true);
    pictures.open(photo);
  }

  @Test
  void coatsAloneAskForPaper() {
    place(SpotKind.FULL, "earth", patch(0));

    assertThat(spots.stateProperty().get().needsPaper()).isTrue();
    assertThat(spots.canKeep()).isFalse();
  }

  @Test
  void aSpotReadsWhatWasPaintedThereAndTeachesItsPaint() {
    placeAll();

    SpotsState state = spots.stateProperty().get();
    // The colour put on the page, not one the program worked out.
    assertThat(
            Difference.ciede2000(
                state.rows().get(1).chip().orElseThrow().read(),
                Light.D65.lab(
                    InventedShelf.coat(List.of(new PaintLoad("earth", 1)), PaintedPage.PAPER))))
        .isLessThan(2.5);
    assertThat(state.rows().get(1).chip().orElseThrow().model()).isPresent();
    assertThat(spots.canKeep()).isTrue();
  }

  @Test
  void keepingIsOneEditAndPlacingAnewTakesItsPlace() {
    placeAll();
    Kit before = session.kit();

    spots.keep();
    Paint earth = session.kit().shelf().find("earth").orElseThrow();
    assertThat(earth.swatchbook().coats()).hasSize(2);
    assertThat(earth.swatchbook().origin().orElseThrow().detail()).isEqualTo("table.jpg");
    spots.marks().move(1, patch(0).plus(2, 0));
    spots.keep();

    assertThat(session.kit().shelf().find("earth").orElseThrow().swatchbook().coats()).hasSize(2);
    session.undo();
    session.undo();
    assertThat(session.kit()).isEqualTo(before);
  }

  @Test
  void aSpotIsResizedAndTakenAwayInHand() {
    placeAll();
    double before = spots.marks().sidePx();

    spots.marks().resize(before / 2);
    assertThat(spots.marks().spotsProperty().get().get(2).sidePx()).isEqualTo(before / 2);
    spots.marks().remove(0);

    assertThat(spots.marks().spotsProperty().get())
        .extracting(Spot::kind)
        .containsExactly(SpotKind.FULL, SpotKind.WASH);
    assertThat(spots.stateProperty().get().needsPaper()).isTrue();
  }

  private void placeAll() {
    place(SpotKind.PAPER, "", camera.map(new Point(60, 250)));
    place(SpotKind.FULL, "earth", patch(0));
    place(SpotKind.WASH, "earth", patch(1));
  }

  private void place(SpotKind kind, String paint, Point at) {
    spots.marks().nextKindProperty().set(kind);
    spots.marks().nextPaintProperty().set(Optional.of(paint).filter(id -> !id.isEmpty()));
    spots.marks().pointAt(at);
    spots.marks().resize(16);
  }

  /** The upper part of a patch of the third row, above its line. */
  private static Point patch(int column) {
    Zone outline =
        PaintedPage.outlines(Sheets.papers(SheetFormat.A4).sheets().get(0)).get(8 + column);
    return camera.map(outline.at(0.5, 0.33));
  }
}
