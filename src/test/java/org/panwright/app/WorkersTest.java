package org.panwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

class WorkersTest {
  @Test
  void whatIsAskedForAfterTheEndIsDroppedButNoFile() {
    Workers workers = new Workers();
    workers.close();
    AtomicBoolean done = new AtomicBoolean();

    assertThatCode(() -> workers.painting().execute(() -> done.set(true)))
        .doesNotThrowAnyException();
    assertThatCode(() -> workers.judging().execute(() -> done.set(true)))
        .doesNotThrowAnyException();
    assertThatThrownBy(() -> workers.files().execute(() -> done.set(true)))
        .isInstanceOf(RejectedExecutionException.class);
    assertThat(done).isFalse();
  }

  @Test
  void whatIsAskedForBeforeIsDone() throws InterruptedException {
    CountDownLatch done = new CountDownLatch(2);
    try (Workers workers = new Workers()) {
      workers.painting().execute(done::countDown);
      workers.files().execute(done::countDown);
      assertThat(done.await(10, TimeUnit.SECONDS)).isTrue();
    }
  }
}
