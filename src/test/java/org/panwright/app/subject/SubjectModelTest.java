package org.panwright.app.subject;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.app.recipes.Wanted;
import org.panwright.app.subject.PhotoSource.UnreadablePhotoException;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.kit.Edit;
import org.panwright.kit.Outing;
import org.panwright.kit.SubjectColour;

class SubjectModelTest {
  private static final Path BAY = Path.of("bay.png");

  private final Session session = Sessions.on(ThreePaintKit.kit());
  private Photo photo = bay();
  private final PhotoBench bench = bench(session, this::read);
  private final SubjectModel model = new SubjectModel(session, bench);

  /** Three quarters sand over one quarter sea, 40 x 40 pixels. */
  private static Photo bay() {
    int[] rgb = new int[1600];
    Arrays.fill(rgb, 0, 1200, 0xffcdb68c);
    Arrays.fill(rgb, 1200, 1600, 0xff3c697d);
    return new Photo("bay.png", 40, rgb);
  }

  private Photo read(Path file) throws UnreadablePhotoException {
    if (!file.equals(BAY)) {
      throw new UnreadablePhotoException(file + " is no picture.");
    }
    return photo;
  }

  @Test
  void theFirstPhotoGivesItsColoursWithTheirShares() {
    model.open(BAY);
    assertThat(model.colours()).extracting(SubjectColour::share).containsExactly(0.75, 0.25);
    assertThat(model.colours()).extracting(SubjectColour::photo).containsOnly("bay.png");
    // Sand #cdb68c: L* 75.03, by the formulas of IEC 61966-2-1 and CIE 15 worked by hand.
    assertThat(model.colours().get(0).lab().l()).isCloseTo(75.03, within(0.1));
    assertThat(model.colours()).extracting(SubjectColour::name).doesNotHaveDuplicates();
  }

  @Test
  void aKitWithoutOutingGetsOneInOneStep() {
    model.open(BAY);
    Outing added = model.outingProperty().get().orElseThrow();
    assertThat(added.name()).isEqualTo("Subject of bay.png");
    assertThat(added.lineupId()).contains(ThreePaintKit.LINEUP);
    session.undo();
    assertThat(session.kit()).isEqualTo(ThreePaintKit.kit());
    assertThat(model.colours()).isEmpty();
  }

  @Test
  void aFlatPhotoGivesOneColour() {
    int[] flat = new int[900];
    Arrays.fill(flat, 0xff808080);
    photo = new Photo("bay.png", 30, flat);
    model.open(BAY);
    assertThat(model.colours()).singleElement().satisfies(c -> assertThat(c.share()).isOne());
  }

  @Test
  void aPhotoOfOnePixelIsAPhoto() {
    photo = new Photo("bay.png", 1, new int[] {0xff123456});
    model.open(BAY);
    assertThat(model.colours()).hasSize(1);
  }

  @Test
  void whatIsNoPhotoIsSaidAndLeavesTheOneBefore() {
    model.open(BAY);
    model.open(Path.of("letter.txt"));
    assertThat(bench.problemProperty().get()).contains("letter.txt is no picture.");
    assertThat(bench.photo()).contains(photo);
    model.open(BAY);
    assertThat(bench.problemProperty().get()).isEmpty();
  }

  @Test
  void takingColoursAnewKeepsThoseKeptByHand() {
    model.open(BAY);
    assertThat(model.type("#203050")).isTrue();
    model.wantedProperty().set(2);
    model.takeColours();
    assertThat(model.colours()).hasSize(3);
    assertThat(model.colours().get(2).share()).isZero();
  }

  @Test
  void aPickedColourIsKeptOrReplaces() {
    model.open(BAY);
    model.pick(5, 38);
    model.keepPicked();
    assertThat(model.colours()).hasSize(3);
    Lab sea = model.colours().get(1).lab();
    assertThat(Difference.ciede2000(model.colours().get(2).lab(), sea)).isLessThan(0.1);
    String name = model.colours().get(0).name();
    model.replaceByPicked(model.colours().get(0));
    assertThat(model.colours().get(0).name()).isEqualTo(name);
    assertThat(Difference.ciede2000(model.colours().get(0).lab(), sea)).isLessThan(0.1);
  }

  @Test
  void coloursAreRenamedAndRemoved() {
    model.open(BAY);
    model.rename(model.colours().get(0), "  wet sand ");
    assertThat(model.colours().get(0).name()).isEqualTo("wet sand");
    model.rename(model.colours().get(0), "  ");
    assertThat(model.colours().get(0).name()).isEqualTo("wet sand");
    model.remove(model.colours().get(0));
    assertThat(model.colours()).hasSize(1);
  }

  @Test
  void aFieldThatSpeaksUpAfterItsColourHasGoneChangesNothing() {
    model.open(BAY);
    SubjectColour gone = model.colours().get(1);
    model.remove(gone);
    List<SubjectColour> left = model.colours();
    model.rename(gone, "too late");
    model.remove(gone);
    assertThat(model.colours()).isEqualTo(left);
  }

  @Test
  void whatIsNoColourAddsNone() {
    assertThat(model.type("blueish")).isFalse();
    assertThat(model.colours()).isEmpty();
  }

  @Test
  void eachColourHasItsNearestMixes() {
    SubjectRecipes recipes =
        new SubjectRecipes(session, model, Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail);
    model.open(BAY);
    List<SubjectRow> rows = recipes.shownProperty().get().rows();
    assertThat(rows).extracting(SubjectRow::colour).isEqualTo(model.colours());
    assertThat(rows)
        .allSatisfy(
            row -> {
              assertThat(row.box()).isPresent();
              row.shelf()
                  .ifPresent(
                      near ->
                          assertThat(near.match().deltaE())
                              .isLessThan(row.box().orElseThrow().match().deltaE()));
            });
    session.perform(new Edit.EmptyWell(ThreePaintKit.LINEUP, "w1"));
    session.perform(new Edit.EmptyWell(ThreePaintKit.LINEUP, "w2"));
    assertThat(recipes.shownProperty().get().rows()).allMatch(row -> row.box().isEmpty());
    assertThat(recipes.isSettled()).isTrue();
  }

  @Test
  void thePhotoIsPaintedWhileThatIsWanted() {
    model.open(BAY);
    assertThat(bench.paintedProperty().get()).isEmpty();
    bench.showPaintedProperty().set(true);
    assertThat(bench.paintedProperty().get().orElseThrow()).hasSize(1600);
    int[] before = bench.paintedProperty().get().orElseThrow();
    session.perform(new Edit.EmptyWell(ThreePaintKit.LINEUP, "w1"));
    assertThat(bench.paintedProperty().get().orElseThrow()).isNotEqualTo(before);
    bench.showPaintedProperty().set(false);
    assertThat(bench.paintedProperty().get()).isEmpty();
    assertThat(bench.progressProperty().get()).isNegative();
  }

  @Test
  void anotherOutingShowsItsOwnColours() {
    model.open(BAY);
    Outing other =
        new Outing("hill", "Hill", Optional.empty(), "", Optional.empty(), 0, 0, List.of());
    session.perform(new Edit.AddOuting(other));
    assertThat(model.colours()).hasSize(2);
    model.choose("hill");
    assertThat(model.colours()).isEmpty();
    session.selectionProperty().set(Wanted.middleGrey());
    model.keepPicked();
    assertThat(session.kit().outing("hill").orElseThrow().subjects()).hasSize(1);
  }

  private interface Reader {
    Photo read(Path file) throws UnreadablePhotoException;
  }

  private static PhotoBench bench(Session session, Reader reader) {
    return new PhotoBench(
        session,
        (file, progress, stopped) -> reader.read(file),
        Sessions.AT_ONCE,
        Sessions.AT_ONCE,
        Sessions.AT_ONCE,
        Sessions::fail);
  }
}
