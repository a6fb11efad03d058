package org.panwright.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.Edit;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.KitFiles;
import org.panwright.store.OpenedKit;

class KitDocumentTest {
  @TempDir Path folder;

  private final Session session = Sessions.on(ThreePaintKit.kit());
  private final List<FileProblem> problems = new ArrayList<>();
  private final Deque<Runnable> away = new ArrayDeque<>();
  private final KitDocument document =
      new KitDocument(
          session,
          OpenedKit.unsaved(session.kit()),
          new KitFiles(new PigmentLibrary(List.of())),
          away::add,
          Sessions.AT_ONCE,
          Sessions::fail);

  @Test
  void whatIsJustOpenHasNothingUnsaved() {
    assertThat(document.unsavedProperty().get()).isFalse();
    assertThat(document.file()).isEmpty();
  }

  @Test
  void anEditIsUnsavedUntilUndone() {
    session.perform(new Edit.RemovePaint("red"));
    assertThat(document.unsavedProperty().get()).isTrue();
    session.undo();
    assertThat(document.unsavedProperty().get()).isFalse();
  }

  @Test
  void savingGivesTheKitAFileAndLeavesNothingUnsaved() {
    session.perform(new Edit.RemovePaint("red"));
    Path file = save("a.kit.json");
    assertThat(document.file()).contains(file);
    assertThat(document.unsavedProperty().get()).isFalse();
    session.undo();
    assertThat(document.unsavedProperty().get()).isTrue();
  }

  @Test
  void whatIsDoneWhileSavingIsStillUnsavedAfterwards() {
    Path file = folder.resolve("a.kit.json");
    document.saveTo(file, () -> {}, problems::add);
    session.perform(new Edit.RemovePaint("red"));
    runAway();
    assertThat(document.unsavedProperty().get()).isTrue();
  }

  @Test
  void nothingElseIsReadOrWrittenMeanwhile() {
    document.saveTo(folder.resolve("a.kit.json"), () -> {}, problems::add);
    assertThat(document.busyProperty().get()).isTrue();
    document.saveTo(folder.resolve("b.kit.json"), () -> {}, problems::add);
    runAway();
    assertThat(document.busyProperty().get()).isFalse();
    assertThat(folder.resolve("b.kit.json")).doesNotExist();
  }

  @Test
  void aSavedKitOpensAgain() {
    Kit saved = session.kit();
    Path file = save("a.kit.json");
    document.startWith(Kit.empty("other"));
    document.open(file, () -> {}, problems::add);
    runAway();
    assertThat(session.kit()).isEqualTo(saved);
    assertThat(session.historyProperty().get().undoable()).isEmpty();
    assertThat(document.unsavedProperty().get()).isFalse();
  }

  @Test
  void aFileThatCannotBeOpenedLeavesTheKitAlone() throws Exception {
    Kit before = session.kit();
    document.open(Files.writeString(folder.resolve("x.kit.json"), "{"), () -> {}, problems::add);
    runAway();
    assertThat(session.kit()).isSameAs(before);
    assertThat(problems).hasSize(1);
  }

  @Test
  void aFileChangedByAnotherWindowIsNotSavedOver() throws Exception {
    Path file = save("a.kit.json");
    Files.writeString(file, Files.readString(file) + "\n");
    String others = Files.readString(file);
    session.perform(new Edit.RemovePaint("red"));
    document.saveTo(file, () -> {}, problems::add);
    runAway();
    assertThat(problems).containsExactly(new FileProblem.ChangedElsewhere(file));
    assertThat(file).hasContent(others);
    assertThat(document.unsavedProperty().get()).isTrue();
  }

  @Test
  void whatIsToBeToldOfAFileIsToldUntilItIsReadOrTheKitIsLeft() throws Exception {
    Path file = save("a.kit.json");
    String text = Files.readString(file);
    Files.writeString(file, text.replaceFirst("\"owned\"", "\"borrowed\""));
    document.open(file, () -> {}, problems::add);
    runAway();
    List<FileProblem> told = document.noticesProperty().get();
    assertThat(told).isNotEmpty();

    session.perform(new Edit.RenameKit("renamed"));
    save("a.kit.json");
    assertThat(document.noticesProperty().get()).isEqualTo(told);

    document.noticesRead();
    save("a.kit.json");
    assertThat(document.noticesProperty().get()).isEmpty();
  }

  private Path save(String name) {
    Path file = folder.resolve(name);
    document.saveTo(file, () -> {}, problems::add);
    runAway();
    assertThat(problems).isEmpty();
    return file;
  }

  private void runAway() {
    while (!away.isEmpty()) {
      away.remove().run();
    }
  }
}
