package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.kit.Edit;
import org.panwright.kit.FileProblem;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.kit.FileProblem.ValueKind;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;

class KitFilesTest {
  private static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();
  private static final Kit RENAMED = new Edit.RenameKit("renamed").apply(SampleKit.KIT);

  private final KitFiles files = new KitFiles(LIBRARY);

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void nameTheFile() {
    file = folder.resolve("harbour.kit.json");
  }

  @Test
  void aSavedKitOpensAgain() throws Exception {
    saved();
    OpenedKit opened = files.open(file);
    assertThat(opened.kit()).isEqualTo(SampleKit.KIT);
    assertThat(opened.notices()).isEmpty();
    assertThat(opened.forLooking()).isFalse();
  }

  @Test
  void theContentBeforeASaveStaysAsBackup() throws Exception {
    OpenedKit opened = saved();
    byte[] before = Files.readAllBytes(file);
    files.save(opened, RENAMED);
    assertThat(KitFiles.backupOf(file)).hasBinaryContent(before);
    assertThat(files.open(file).kit()).isEqualTo(RENAMED);
  }

  @Test
  void aSecondWindowCannotSaveOverTheFirst() throws Exception {
    saved();
    OpenedKit first = files.open(file);
    OpenedKit second = files.open(file);
    files.save(first, RENAMED);
    byte[] now = Files.readAllBytes(file);
    assertThat(problemOf(() -> files.save(second, SampleKit.KIT)))
        .isEqualTo(new FileProblem.ChangedElsewhere(file));
    assertThat(file).hasBinaryContent(now);
    Path elsewhere = folder.resolve("mine.kit.json");
    files.saveAs(second, SampleKit.KIT, elsewhere);
    assertThat(files.open(elsewhere).kit()).isEqualTo(SampleKit.KIT);
  }

  @Test
  void oneWindowSavesAgainAndAgain() throws Exception {
    OpenedKit opened = saved();
    opened = files.save(opened, RENAMED);
    files.save(opened, SampleKit.KIT);
    assertThat(files.open(file).kit()).isEqualTo(SampleKit.KIT);
  }

  @Test
  void aFileThatWasRemovedMeanwhileIsMadeAgain() throws Exception {
    OpenedKit opened = saved();
    Files.delete(file);
    files.save(opened, RENAMED);
    assertThat(files.open(file).kit()).isEqualTo(RENAMED);
  }

  @Test
  void aNewerKitOpensForLookingAndIsNotSavedOver() throws Exception {
    saved();
    Files.writeString(
        file, Files.readString(file).replace("\"schemaVersion\": 1", "\"schemaVersion\": 7"));
    byte[] before = Files.readAllBytes(file);
    OpenedKit opened = files.open(file);
    assertThat(opened.kit()).isEqualTo(SampleKit.KIT);
    assertThat(opened.forLooking()).isTrue();
    assertThat(opened.notices()).containsExactly(new FileProblem.Newer(file, "7", 1));
    assertThat(problemOf(() -> files.save(opened, RENAMED)))
        .isEqualTo(new FileProblem.OpenedForLooking(file));
    assertThat(problemOf(() -> files.saveAs(OpenedKit.unsaved(RENAMED), RENAMED, file)))
        .isEqualTo(new FileProblem.NewerInTheWay(file));
    assertThat(file).hasBinaryContent(before);
    OpenedKit copy = files.saveAs(opened, RENAMED, folder.resolve("copy.kit.json"));
    assertThat(copy.forLooking()).isFalse();
  }

  @Test
  void anUnreadableFileInTheWayGetsAnotherName() throws Exception {
    Files.writeString(file, "{ \"half\": ");
    OpenedKit opened = files.saveAs(OpenedKit.unsaved(RENAMED), RENAMED, file);
    Path aside = folder.resolve("harbour.kit.json.unreadable-1");
    assertThat(opened.notices()).containsExactly(new FileProblem.MovedAside(file, aside));
    assertThat(aside).hasContent("{ \"half\": ");
    assertThat(files.open(file).kit()).isEqualTo(RENAMED);
    Files.writeString(file, "again");
    files.saveAs(OpenedKit.unsaved(RENAMED), RENAMED, file);
    assertThat(aside).hasContent("{ \"half\": ");
    assertThat(folder.resolve("harbour.kit.json.unreadable-2")).hasContent("again");
  }

  @Test
  void openingChangesNothingOnTheDisk() throws Exception {
    Files.writeString(file, "no kit");
    problemOf(() -> files.open(file));
    assertThat(folder.toFile().list()).containsExactly("harbour.kit.json");
    assertThat(file).hasContent("no kit");
  }

  @Test
  void aDamagedKitNamesItsBackup() throws Exception {
    files.save(saved(), RENAMED);
    Files.writeString(file, "");
    assertThat(problemOf(() -> files.open(file)))
        .isEqualTo(
            new FileProblem.WithBackup(new FileProblem.Empty(file), KitFiles.backupOf(file)));
  }

  @Test
  void anUnreadableBackupIsNotOffered() throws Exception {
    Files.writeString(file, "");
    Files.writeString(KitFiles.backupOf(file), "");
    assertThat(problemOf(() -> files.open(file))).isEqualTo(new FileProblem.Empty(file));
  }

  @ParameterizedTest(name = "cut after {0} twentieths")
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19})
  void aKitCutShortIsRefusedAndLeftAlone(int twentieths) throws Exception {
    saved();
    byte[] whole = Files.readAllBytes(file);
    byte[] cut = java.util.Arrays.copyOf(whole, whole.length * twentieths / 20);
    Files.write(file, cut);
    assertThat(problemOf(() -> files.open(file)))
        .isInstanceOfAny(FileProblem.Empty.class, FileProblem.CutShort.class);
    assertThat(file).hasBinaryContent(cut);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "plain words      | the quay at dawn",
        "a picture        | \u0089PNG",
        "one brace extra  | {\"schemaVersion\": 1, \"shelf\": {}}}",
        "single quotes    | {'schemaVersion': 1}",
        "no number at all | {\"schemaVersion\": NaN, \"shelf\": {}}"
      })
  void whatIsNoJsonIsRefused(String name, String content) throws Exception {
    Files.write(file, content.getBytes(StandardCharsets.ISO_8859_1));
    assertThat(problemOf(() -> files.open(file))).isInstanceOf(FileProblem.NotJson.class);
  }

  @Test
  void bytesThatAreNoTextAreRefused() throws Exception {
    saved();
    byte[] bytes = Files.readAllBytes(file);
    bytes[bytes.length / 2] = (byte) 0xff;
    Files.write(file, bytes);
    assertThat(problemOf(() -> files.open(file))).isInstanceOf(FileProblem.NotJson.class);
  }

  @Test
  void endlessNestingIsRefused() throws Exception {
    Files.writeString(file, "[".repeat(100_000));
    assertThat(problemOf(() -> files.open(file))).isInstanceOf(FileProblem.NotJson.class);
  }

  @Test
  void aFieldGivenTwiceIsRefusedBecauseOneWouldBeLost() throws Exception {
    Files.writeString(file, "{\"schemaVersion\": 1, \"shelf\": {},\n \"name\": 1, \"name\": 2}");
    assertThat(problemOf(() -> files.open(file)))
        .isEqualTo(new FileProblem.FieldTwice(file, "name", 2));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[]",
        "7",
        "null",
        "{}",
        "{\"schemaVersion\": 1}",
        "{\"shelf\": {\"paints\": []}}"
      })
  void jsonThatIsNoKitIsRefused(String content) throws Exception {
    Files.writeString(file, content);
    assertThat(problemOf(() -> files.open(file))).isEqualTo(new FileProblem.NotAKit(file));
  }

  @Test
  void aFrameOfTheWrongKindIsRefusedByPath() throws Exception {
    Files.writeString(file, "{\"schemaVersion\": 1, \"shelf\": {\"paints\": \"three\"}}");
    assertThat(problemOf(() -> files.open(file)))
        .isEqualTo(
            new FileProblem.BadField(
                file, "shelf.paints", new FieldFault.WrongKind(ValueKind.LIST, ValueKind.TEXT)));
  }

  @Test
  void anAbsentFileIsTold() {
    assertThat(problemOf(() -> files.open(file))).isEqualTo(new FileProblem.Missing(file));
  }

  @Test
  void aFolderIsNoKit() {
    assertThat(problemOf(() -> files.open(folder))).isInstanceOf(FileProblem.CannotRead.class);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "negative box     | \"widthMm\": 100 | \"widthMm\": -100      | boxes[0].widthMm",
        "huge box         | \"widthMm\": 100 | \"widthMm\": 1e999      | boxes[0].widthMm",
        "huge exponent    | \"widthMm\": 100 | \"widthMm\": 1e99999999 | boxes[0].widthMm",
        "box as text      | \"widthMm\": 100 | \"widthMm\": \"100\"    | boxes[0].widthMm",
        "negative well    | \"widthMm\": 30  | \"widthMm\": -30        | boxes[0].wells[1].widthMm",
        "well outside     | \"xMm\": 60      | \"xMm\": 95             | boxes[0].wells[2]",
        "wells overlap    | \"xMm\": 60      | \"xMm\": 20             | boxes[0].wells[2]",
        "no such kind     | \"kind\": \"pan\"| \"kind\": \"bucket\"    | boxes[0].wells[1].kind",
        "pigment nonsense | \"code\": \"PB29\", | \"code\": \"blue\",  | shelf.paints[0].pigments[0].code",
        "unknown pigment  | \"code\": \"PB29\", | \"code\": \"PB298\", | shelf.paints[0].pigments[0].code",
        "negative share   | \"PB29\", \"share\": 1} | \"PB29\", \"share\": -1} | shelf.paints[0].pigments[0].share",
        "shares sum to 7  | \"PB29\", \"share\": 1} | \"PB29\", \"share\": 7} | shelf.paints[0].pigments",
        "no pigment       | [{\"code\": \"PB29\", \"share\": 1}] | [] | shelf.paints[0].pigments",
        "same id twice    | \"id\": \"p2\"   | \"id\": \"p1\"          | shelf.paints[1].id",
        "blank name       | \"Ultramarine\"  | \"  \"                  | shelf.paints[0].name",
        "handling unknown | \"staining\": \"low\" | \"staining\": \"lots\" | shelf.paints[0].handling.staining",
        "bad date         | \"2026-05-17\"   | \"17 May\"              | outings[0].date",
        "odd sheets       | \"sheets\": 4    | \"sheets\": 4.5         | outings[0].sheets",
        "washes rise      | \"milk\": 0.3    | \"milk\": 0.9           | washes",
        "too few bands    | \"scattering\": [0.1, | \"scattering\": [   | shelf.paints[2].optics.scattering"
      })
  void oneBadValueIsNamedAndTheRestOpensAndNothingIsLost(
      String name, String good, String bad, String field) throws Exception {
    saved();
    String text = Files.readString(file).replaceFirst(quote(good), bad.replace("\\", "\\\\"));
    assertThat(text).contains(bad);
    Files.writeString(file, text);
    OpenedKit opened = files.open(file);
    assertThat(opened.notices()).isNotEmpty();
    assertThat(fieldOf(opened.notices().get(0))).isEqualTo(field);
    assertThat(opened.kit().name()).isEqualTo(SampleKit.KIT.name());

    OpenedKit again = files.save(opened, opened.kit());
    assertThat(files.open(file).kit()).isEqualTo(opened.kit());
    boolean sharesMended = name.startsWith("shares");
    String saved = Files.readString(file).replace("E+", "e");
    assertThat(saved.contains(bad)).isEqualTo(!sharesMended);
    assertThat(again.notices()).isEmpty();
  }

  /** As some editors save a text: RFC 8259 allows a reader to overlook the mark. */
  @ParameterizedTest
  @ValueSource(strings = {"UTF-8", "UTF-16BE", "UTF-16LE"})
  void aTextWithAByteOrderMarkOpens(String encoding) throws Exception {
    saved();
    Files.write(file, ("\uFEFF" + Files.readString(file)).getBytes(encoding));
    assertThat(files.open(file).kit()).isEqualTo(SampleKit.KIT);
  }

  @ParameterizedTest
  @EnumSource(FailingDisk.Step.class)
  void aSaveThatFailsHalfWayLosesNothing(FailingDisk.Step step) throws Exception {
    OpenedKit opened = files.save(saved(), SampleKit.KIT);
    byte[] before = Files.readAllBytes(file);
    // The first pass is the backup, the second the kit itself.
    for (int passes = 0; passes < 2; passes++) {
      KitFiles failing =
          new KitFiles(
              LIBRARY, new FailingDisk(step, new IOException("No space left on device"), passes));
      assertThat(problemOf(() -> failing.save(opened, RENAMED)))
          .isInstanceOf(FileProblem.DiskFull.class);
      assertThat(file).hasBinaryContent(before);
      assertThat(KitFiles.backupOf(file)).hasBinaryContent(before);
      assertThat(folder.toFile().list()).hasSize(2);
    }
    files.save(opened, RENAMED);
    assertThat(files.open(file).kit()).isEqualTo(RENAMED);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "300 characters, xxxxxxxxxx, 30",
    "emoji, 🎨👩🏽‍🎨, 1",
    "right to left, لون البحر עם שם, 1",
    "accents and Greek, Ærøskøbing Καλημέρα, 1",
    "half a surrogate pair, \uD83C, 1",
    "quotes and control characters, \"a\\b\u0001\u007f\u2028\", 1"
  })
  void unusualNamesComeBackWhole(String kind, String piece, int times) throws Exception {
    Kit named = new Edit.RenameKit(piece.repeat(times)).apply(SampleKit.KIT);
    files.saveAs(OpenedKit.unsaved(named), named, file);
    OpenedKit opened = files.open(file);
    assertThat(opened.kit()).isEqualTo(named);
    assertThat(opened.notices()).isEmpty();
  }

  private OpenedKit saved() throws Exception {
    return files.saveAs(OpenedKit.unsaved(SampleKit.KIT), SampleKit.KIT, file);
  }

  private static String quote(String text) {
    return java.util.regex.Pattern.quote(text);
  }

  private static String fieldOf(FileProblem notice) {
    if (notice instanceof FileProblem.LeftOut leftOut) {
      return leftOut.at();
    }
    return ((FileProblem.Replaced) notice).field();
  }

  private static FileProblem problemOf(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
    return catchThrowableOfType(FileProblemException.class, call).problem();
  }
}
