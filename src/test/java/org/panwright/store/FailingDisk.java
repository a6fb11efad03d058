package org.panwright.store;

import java.io.IOException;
import java.nio.file.Path;

/** A disk that fails at one step, as a full or broken one does. */
final class FailingDisk implements Disk {
  /** The steps of a save. */
  enum Step {
    CREATE,
    WRITE,
    FORCE,
    CLOSE,
    MOVE
  }

  private final Step failing;
  private final IOException failure;
  private int passes;

  /**
   * @param passes how often the step succeeds before it fails
   */
  FailingDisk(Step failing, IOException failure, int passes) {
    this.failing = failing;
    this.failure = failure;
    this.passes = passes;
  }

  @Override
  public Sink create(Path fresh) throws IOException {
    failAt(Step.CREATE);
    Sink real = REAL.create(fresh);
    return new Sink() {
      @Override
      public void write(byte[] bytes) throws IOException {
        if (failing == Step.WRITE && passes == 0) {
          real.write(java.util.Arrays.copyOf(bytes, bytes.length / 2));
        }
        failAt(Step.WRITE);
        real.write(bytes);
      }

      @Override
      public void force() throws IOException {
        failAt(Step.FORCE);
        real.force();
      }

      @Override
      public void close() throws IOException {
        real.close();
        failAt(Step.CLOSE);
      }
    };
  }

  @Override
  public boolean mayChange(Path file) {
    return REAL.mayChange(file);
  }

  @Override
  public void moveOver(Path from, Path to) throws IOException {
    failAt(Step.MOVE);
    REAL.moveOver(from, to);
  }

  private void failAt(Step step) throws IOException {
    if (step == failing && passes-- == 0) {
      throw failure;
    }
  }
}
