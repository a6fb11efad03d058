package org.panwright.app.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class LatestTest {
  private final Queue<Runnable> away = new ArrayDeque<>();
  private final Queue<Runnable> home = new ArrayDeque<>();
  private final List<String> delivered = new ArrayList<>();
  private final List<RuntimeException> failed = new ArrayList<>();
  private final Latest<String> latest = new Latest<>(away::add, home::add);

  @Test
  void resultComesHome() {
    latest.request(outdated -> "one", delivered::add, failed::add);
    runAll();

    assertThat(delivered).containsExactly("one");
  }

  @Test
  void onlyTheNewestOfTwoWaitingRequestsIsWorkedOn() {
    List<String> worked = new ArrayList<>();
    for (String name : List.of("old", "new")) {
      latest.request(
          outdated -> {
            worked.add(name);
            return name;
          },
          delivered::add,
          failed::add);
    }
    runAll();

    assertThat(worked).containsExactly("new");
    assertThat(delivered).containsExactly("new");
  }

  @Test
  void resultOvertakenOnItsWayHomeIsDropped() {
    latest.request(outdated -> "old", delivered::add, failed::add);
    away.remove().run();
    latest.request(outdated -> "new", delivered::add, failed::add);
    runAll();

    assertThat(delivered).containsExactly("new");
  }

  @Test
  void runningWorkLearnsThatItIsOutdated() {
    List<Boolean> answers = new ArrayList<>();
    latest.request(
        outdated -> {
          answers.add(outdated.getAsBoolean());
          latest.cancel();
          answers.add(outdated.getAsBoolean());
          throw new CancellationException();
        },
        delivered::add,
        failed::add);
    runAll();

    assertThat(answers).containsExactly(false, true);
    assertThat(delivered).isEmpty();
    assertThat(failed).isEmpty();
  }

  @Test
  void failureComesHomeOnlyIfNewest() {
    IllegalStateException fault = new IllegalStateException("broken");
    latest.request(
        outdated -> {
          throw fault;
        },
        delivered::add,
        failed::add);
    runAll();

    assertThat(failed).containsExactly(fault);
    assertThat(delivered).isEmpty();
  }

  @Test
  void lackOfMemoryComesHomeAsAFailure() {
    OutOfMemoryError full = new OutOfMemoryError("made up");
    latest.request(
        outdated -> {
          throw full;
        },
        delivered::add,
        failed::add);
    runAll();

    assertThat(failed).singleElement().extracting(Throwable::getCause).isSameAs(full);
    assertThat(delivered).isEmpty();
  }

  private void runAll() {
    while (!away.isEmpty() || !home.isEmpty()) {
      (away.isEmpty() ? home : away).remove().run();
    }
  }
}
