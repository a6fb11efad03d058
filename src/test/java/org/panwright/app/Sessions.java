package org.panwright.app;

import java.util.List;
import java.util.concurrent.Executor;
import org.panwright.analysis.judge.Judge;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;

/** Sessions for tests, in which judging is done at once on the calling thread. */
public final class Sessions {
  /** Runs everything at once. */
  public static final Executor AT_ONCE = Runnable::run;

  private Sessions() {}

  /** A session on a kit whose paints all have measured optics. */
  public static Session on(Kit kit) {
    return new Session(
        new Judge(new PigmentLibrary(List.of())), AT_ONCE, AT_ONCE, Sessions::fail, kit);
  }

  /** Turns a fault of the program into a failed test. */
  public static void fail(RuntimeException fault) {
    throw fault;
  }
}
