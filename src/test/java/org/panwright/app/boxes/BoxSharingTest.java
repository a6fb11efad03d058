package org.panwright.app.boxes;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.app.BenchKit;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.dialogs.ScriptedDialogs;
import org.panwright.kit.Box;

/** Boxes go to files and come from them away from the thread that asked. */
class BoxSharingTest {
  @TempDir Path folder;
  private final Session session = BenchKit.session(BenchKit.kit());
  private final ScriptedDialogs dialogs = new ScriptedDialogs();
  private final Deque<Runnable> waiting = new ArrayDeque<>();
  private final BoxSharing sharing =
      new BoxSharing(session, dialogs, waiting::add, Sessions.AT_ONCE, Sessions::fail);

  @Test
  void aBoxSavedComesBackAsASecondOne() {
    Path file = folder.resolve("tin.box.json");
    sharing.save(saving(file));
    assertThat(file).as("nothing is written by the thread that asks").doesNotExist();
    work();
    assertThat(file).exists();
    dialogs.choose(file);
    sharing.open();
    assertThat(session.kit().boxes()).hasSize(1);
    work();
    assertThat(session.kit().boxes())
        .extracting(Box::name)
        .containsExactly("Pocket tin", "Pocket tin");
    assertThat(dialogs.said()).hasSize(2);
    assertThat(dialogs.said().get(0)).contains("tin.box.json is saved");
    assertThat(dialogs.said().get(1)).contains("“Pocket tin” is in the kit now");
  }

  @Test
  void aFileThatIsNoBoxIsRefusedInASentenceAndNothingChanges() throws Exception {
    Path file = Files.writeString(folder.resolve("poem.box.json"), "[\"no box\"]");
    dialogs.choose(file);
    sharing.open();
    work();
    assertThat(session.kit()).isEqualTo(BenchKit.kit());
    assertThat(dialogs.said()).singleElement().asString().contains("poem.box.json");
  }

  @Test
  void aPlaceThatCannotBeWrittenIsTold() {
    sharing.save(saving(folder.resolve("no such folder").resolve("tin.box.json")));
    work();
    assertThat(dialogs.said()).singleElement().asString().contains("tin.box.json");
  }

  private String saving(Path file) {
    dialogs.choose(file);
    return session.kit().boxes().get(0).id();
  }

  private void work() {
    while (!waiting.isEmpty()) {
      waiting.remove().run();
    }
  }
}
