package org.panwright.app.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.CompletionException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.app.dialogs.ScriptedDialogs;
import org.panwright.words.FaultWords;

class FaultsTest {
  @TempDir Path folder;

  @Test
  void lackOfMemoryIsToldAsSuchEvenAsACause() {
    ScriptedDialogs dialogs = new ScriptedDialogs();
    Faults faults = new Faults(Log.in(folder), Runnable::run, () -> dialogs);

    faults.take(new CompletionException(new OutOfMemoryError("made up")));
    faults.take(new IllegalStateException("made up"));

    assertThat(dialogs.said()).hasSize(2);
    assertThat(dialogs.said().get(0)).contains(FaultWords.NO_MEMORY);
    assertThat(dialogs.said().get(1)).doesNotContain(FaultWords.NO_MEMORY);
  }
}
