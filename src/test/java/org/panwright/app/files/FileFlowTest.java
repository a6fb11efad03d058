package org.panwright.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.app.dialogs.ScriptedDialogs;
import org.panwright.app.settings.Remembered;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.KitFiles;
import org.panwright.store.OpenedKit;
import org.panwright.store.SettingsFile;
import org.panwright.words.FileWords;

class FileFlowTest {
  private static final Kit DEMO = Kit.empty("demo");

  @TempDir Path folder;

  private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor();
  private final Session session = Sessions.on(ThreePaintKit.kit());
  private final ScriptedDialogs dialogs = new ScriptedDialogs();
  private KitDocument document;
  private Remembered remembered;
  private FileFlow flow;

  @BeforeEach
  void buildUp() {
    document =
        new KitDocument(
            session,
            OpenedKit.unsaved(session.kit()),
            new KitFiles(new PigmentLibrary(List.of())),
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions::fail);
    remembered =
        new Remembered(new SettingsFile(folder.resolve("settings.json")), clock, text -> {});
    flow = new FileFlow(session, document, dialogs, remembered, DEMO);
  }

  @AfterEach
  void stopTheClock() {
    clock.shutdownNow();
  }

  @Test
  void nothingUnsavedIsLeftWithoutAQuestion() {
    flow.openDemo();
    assertThat(session.kit()).isEqualTo(DEMO);
    assertThat(dialogs.said()).isEmpty();
  }

  @Test
  void unsavedChangesAreLeftOnlyByAnswer() {
    session.perform(new Edit.RemovePaint("red"));
    Kit changed = session.kit();
    dialogs.answer(FileWords.STAY);
    flow.startNew();
    assertThat(session.kit()).isSameAs(changed);
    assertThat(dialogs.said()).hasSize(1).first().asString().contains("test kit");
  }

  @Test
  void discardingLeavesWithoutSaving() {
    session.perform(new Edit.RemovePaint("red"));
    dialogs.answer(FileWords.DISCARD);
    flow.openDemo();
    assertThat(session.kit()).isEqualTo(DEMO);
  }

  @Test
  void savingFirstSavesAndThenLeaves() {
    session.perform(new Edit.RemovePaint("red"));
    Path file = folder.resolve("a.kit.json");
    dialogs.answer(FileWords.SAVE_FIRST).choose(file);
    flow.openDemo();
    assertThat(file).exists();
    assertThat(session.kit()).isEqualTo(DEMO);
  }

  @Test
  void savingFirstWithoutChoosingAFileStays() {
    session.perform(new Edit.RemovePaint("red"));
    Kit changed = session.kit();
    dialogs.answer(FileWords.SAVE_FIRST);
    flow.openDemo();
    assertThat(session.kit()).isSameAs(changed);
  }

  @Test
  void aKitOpenedAgainShowsTheLineupLookedAtLast() {
    Lineup first = session.lineup().orElseThrow();
    session.perform(new Edit.AddLineup(first.as("second", "Second")));
    dialogs.choose(folder.resolve("a.kit.json"));
    flow.save();
    session.look("second");
    flow.openDemo();
    flow.open(folder.resolve("a.kit.json"));
    assertThat(session.lineup()).map(Lineup::id).contains("second");
  }

  @Test
  void aLineupThatIsNoLongerThereIsNotLookedFor() {
    Lineup first = session.lineup().orElseThrow();
    dialogs.choose(folder.resolve("a.kit.json"));
    flow.save();
    session.perform(new Edit.AddLineup(first.as("second", "Second")));
    session.look("second");
    dialogs.answer(FileWords.DISCARD);
    flow.openDemo();
    flow.open(folder.resolve("a.kit.json"));
    assertThat(session.lineup()).contains(first);
  }

  @Test
  void aSavedKitIsRememberedAndSavedWithoutAskingAgain() throws Exception {
    Path file = folder.resolve("a.kit.json");
    dialogs.choose(file);
    flow.save();
    assertThat(remembered.settings().recent()).containsExactly(file.toAbsolutePath());
    session.perform(new Edit.RenameKit("sea kit"));
    flow.save();
    assertThat(Files.readString(file)).contains("sea kit");
    assertThat(dialogs.said()).isEmpty();
  }

  @Test
  void aKitChangedByAnotherWindowCanBeSavedElsewhere() throws Exception {
    Path file = folder.resolve("a.kit.json");
    Path other = folder.resolve("b.kit.json");
    dialogs.choose(file);
    flow.save();
    Files.writeString(file, Files.readString(file) + " ");
    session.perform(new Edit.RenameKit("sea kit"));
    dialogs.answer(FileWords.SAVE_ELSEWHERE).choose(other);
    flow.save();
    assertThat(Files.readString(other)).contains("sea kit");
    assertThat(document.file()).contains(other);
    assertThat(dialogs.said()).hasSize(1).first().asString().contains("a.kit.json");
  }

  @Test
  void anUnreadableFileIsNamedAndTheKitStays() throws Exception {
    Kit before = session.kit();
    flow.open(Files.writeString(folder.resolve("broken.kit.json"), "{\"kit\": "));
    assertThat(session.kit()).isSameAs(before);
    assertThat(dialogs.said()).hasSize(1).first().asString().contains("broken.kit.json");
  }

  @Test
  void aBackupIsOfferedAndIsNotSavedOverWithoutAsking() throws Exception {
    Path file = folder.resolve("a.kit.json");
    dialogs.choose(file);
    flow.save();
    session.perform(new Edit.RenameKit("sea kit"));
    flow.save();
    Files.writeString(file, "{");
    dialogs.answer(FileWords.OPEN_BACKUP);
    flow.open(file);
    assertThat(session.kit().name()).isEqualTo("test kit");
    String backup = Files.readString(KitFiles.backupOf(file));
    session.perform(new Edit.RenameKit("third"));
    flow.save();
    assertThat(KitFiles.backupOf(file)).hasContent(backup);
  }

  @Test
  void aKitThatIsGoneLeavesTheListOfRecentOnes() {
    Path gone = folder.resolve("gone.kit.json").toAbsolutePath();
    remembered.change(settings -> settings.withRecent(gone));
    flow.open(gone);
    assertThat(remembered.settings().recent()).isEmpty();
    assertThat(dialogs.said()).hasSize(1).first().asString().contains("gone.kit.json");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Sea kit, Sea kit",
    "'a/b\\c:d', 'a b c d'",
    "'???', New kit",
    "'  spaced  ', spaced"
  })
  void aKitsNameBecomesAFileName(String kit, String file) {
    assertThat(FileFlow.fileName(kit)).isEqualTo(file);
  }

  @Test
  void aVeryLongNameIsCut() {
    assertThat(FileFlow.fileName("🎨".repeat(300))).isEqualTo("🎨".repeat(60));
  }
}
