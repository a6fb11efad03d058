package org.panwright.app.papers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.paint.PigmentLibrary;
import org.panwright.print.CardOptions;
import org.panwright.print.LabelOptions;
import org.panwright.print.LadderOptions;
import org.panwright.print.Made;
import org.panwright.print.Mark;
import org.panwright.print.PaperFormat;
import org.panwright.print.PaperKind;
import org.panwright.print.Papers;

class PapersModelTest {
  @TempDir Path folder;
  private final List<String> said = new ArrayList<>();
  private Session session;
  private PapersModel model;

  @BeforeEach
  void open() {
    open(ThreePaintKit.kit());
  }

  private void open(Kit kit) {
    session = Sessions.on(kit);
    model =
        new PapersModel(
            session,
            new PigmentLibrary(List.of()),
            PaperMemory.none(PaperFormat.A4),
            () -> LocalDate.of(2026, 11, 25),
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions::fail);
  }

  @Test
  void theKindPickedIsMade() {
    for (PaperKind kind : PaperKind.values()) {
      model.kindProperty().set(kind);

      assertThat(model.isSettled()).isTrue();
      assertThat(model.madeProperty().get()).as(kind.name()).isPresent();
    }
    model.kindProperty().set(PaperKind.SWATCH_LADDER);
    assertThat(papers().title()).startsWith("Swatch ladder: ");
  }

  /** ISO 216: A5 measures 148 × 210 mm. */
  @Test
  void aChangedOrderIsMadeAnewAndKept() {
    model.kindProperty().set(PaperKind.SWATCH_LADDER);
    model.change(new LadderOptions(PaperFormat.A5));

    assertThat(papers().sheets().get(0).widthMm()).isEqualTo(148, offset(1e-9));
    model.kindProperty().set(PaperKind.KEY_CARD);
    assertThat(model.order(PaperKind.SWATCH_LADDER).paper()).isEqualTo(PaperFormat.A5);
  }

  @Test
  void anOutingBringsItsOwnLineup() {
    Kit kit = withSecondLineup();
    open(kit);
    assertThat(papers().title()).doesNotContain("other lineup");

    model.outingProperty().set(Optional.of("o"));

    assertThat(papers().title()).contains("other lineup");
    assertThat(model.fileName(true)).isEqualTo("Papers, a day at the weir");
    assertThat(model.outings()).extracting(Outing::name).containsExactly("a day at the weir");
  }

  @Test
  void blackAndWhiteHasNoColour() {
    model.change(CardOptions.USUAL);
    assertThat(swatches()).anyMatch(swatch -> !isGrey(swatch));

    model.greyProperty().set(true);

    assertThat(swatches()).isNotEmpty().allMatch(PapersModelTest::isGrey);
  }

  @Test
  void aLineupWithoutPaintsHasPapersToExplain() {
    Kit kit = ThreePaintKit.kit();
    Lineup first = kit.lineups().get(0);
    open(kit.replacing(first.withFillings(java.util.Map.of())));
    model.kindProperty().set(PaperKind.PAN_LABELS);

    Made made = model.madeProperty().get().orElseThrow();
    assertThat(made.papers()).isEmpty();
    assertThat(made.notes().get(0)).contains("fills no pan");
  }

  @Test
  void withoutALineupNothingIsMade() {
    open(Kit.empty("bare"));

    assertThat(model.madeProperty().get()).isEmpty();
    assertThat(model.isSettled()).isTrue();
    model.saveAll(folder.resolve("x.pdf"), this::done, this::nothing, this::failed);
    assertThat(said).containsExactly("nothing");
  }

  @Test
  void thoseTickedAreSavedInOneFileWithBookmarks() throws Exception {
    for (PaperKind kind : PaperKind.values()) {
      model.tick(kind, kind == PaperKind.MIXING_CHART || kind == PaperKind.PAN_LABELS);
    }
    Path file = folder.resolve("all.pdf");

    model.saveAll(file, this::done, this::nothing, this::failed);

    assertThat(said).containsExactly("done");
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      assertThat(pdf.getDocumentCatalog().getDocumentOutline().children())
          .extracting(PDOutlineItem::getTitle)
          .satisfiesExactly(
              first -> assertThat(first).startsWith("Mixing chart"),
              second -> assertThat(second).startsWith("Pan labels"));
    }
  }

  @Test
  void withNothingTickedNothingIsSaved() {
    for (PaperKind kind : PaperKind.values()) {
      model.tick(kind, false);
    }

    model.saveAll(folder.resolve("all.pdf"), this::done, this::nothing, this::failed);

    assertThat(said).containsExactly("nothing");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void thePaperShownIsSaved() throws Exception {
    model.kindProperty().set(PaperKind.PAN_LABELS);
    model.change(LabelOptions.USUAL.withPlaces(LabelOptions.Places.BASE));
    Path file = folder.resolve("labels.pdf");

    model.save(file, this::done, this::failed);

    assertThat(said).containsExactly("done");
    try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(file))) {
      assertThat(new PDFTextStripper().getText(pdf)).contains("PB15:3");
    }
  }

  @Test
  void aFolderThatIsMissingIsTold() {
    model.save(folder.resolve("none").resolve("x.pdf"), this::done, this::failed);

    assertThat(said).hasSize(1);
    assertThat(said.get(0)).startsWith("failed");
  }

  private static Kit withSecondLineup() {
    Kit kit = ThreePaintKit.kit();
    Lineup first = kit.lineups().get(0);
    List<Lineup> lineups = new ArrayList<>(kit.lineups());
    lineups.add(new Lineup("second", "other lineup", first.boxId(), first.fillings()));
    return kit.withLineups(lineups)
        .withOutings(
            List.of(
                new Outing(
                    "o",
                    "a day at the weir",
                    Optional.empty(),
                    "the weir",
                    Optional.of("second"),
                    3,
                    2,
                    List.of())));
  }

  private Papers papers() {
    return model.madeProperty().get().flatMap(Made::papers).orElseThrow();
  }

  private List<Mark.Swatch> swatches() {
    return papers().sheets().stream()
        .flatMap(sheet -> sheet.singleMarks().stream())
        .filter(Mark.Swatch.class::isInstance)
        .map(Mark.Swatch.class::cast)
        .toList();
  }

  private static boolean isGrey(Mark.Swatch swatch) {
    return swatch.run().stream().allMatch(c -> c.red() == c.green() && c.green() == c.blue());
  }

  private void done() {
    said.add("done");
  }

  private void nothing() {
    said.add("nothing");
  }

  private void failed(FileProblem problem) {
    said.add("failed " + problem);
  }
}
