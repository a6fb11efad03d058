package org.panwright.app.faults;

import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.words.FaultWords;

/**
 * Takes every fault nobody else took: it is logged each time and told once for each code, so that a
 * fault in something painted sixty times a second does not bury the window under notes.
 */
public final class Faults implements Thread.UncaughtExceptionHandler {
  private final Log log;
  private final Executor home;
  private final Supplier<Dialogs> dialogs;
  private final Set<String> told = new HashSet<>();
  private boolean telling;

  /**
   * @param home the JavaFX thread
   * @param dialogs asked for when there is something to tell
   */
  public Faults(Log log, Executor home, Supplier<Dialogs> dialogs) {
    this.log = log;
    this.home = home;
    this.dialogs = dialogs;
  }

  @Override
  public void uncaughtException(Thread thread, Throwable fault) {
    take(fault);
  }

  /** Takes a fault. Any thread. */
  public void take(Throwable fault) {
    String code = FaultCode.of(fault);
    log.fault(code, fault);
    String sentence =
        isLackOfMemory(fault) ? FaultWords.NO_MEMORY : FaultWords.sentence(code, log.file());
    home.execute(() -> tell(code, sentence));
  }

  private static boolean isLackOfMemory(Throwable fault) {
    return fault instanceof OutOfMemoryError
        || (fault.getCause() != null && isLackOfMemory(fault.getCause()));
  }

  private void tell(String code, String sentence) {
    if (telling || !told.add(code)) {
      return;
    }
    telling = true;
    try {
      dialogs.get().tell(FaultWords.TITLE, sentence);
    } finally {
      telling = false;
    }
  }
}
