package org.panwright.app.swatches;

import java.util.Optional;
import org.panwright.swatch.sheet.ReadingFault;
import org.panwright.swatch.sheet.ReadingFaultException;

/**
 * What came of reading a picture: one of the two, or neither before anything was read.
 *
 * @param found what was read
 * @param fault why nothing could be
 */
public record Readout<T>(Optional<T> found, Optional<ReadingFault> fault) {
  /** Reads something, or says why it cannot. */
  public interface Attempt<T> {
    /** Reads. */
    T read() throws ReadingFaultException;
  }

  /** Nothing was read yet. */
  public static <T> Readout<T> nothing() {
    return new Readout<>(Optional.empty(), Optional.empty());
  }

  /** What came of an attempt. */
  public static <T> Readout<T> of(Attempt<T> attempt) {
    try {
      return new Readout<>(Optional.of(attempt.read()), Optional.empty());
    } catch (ReadingFaultException unreadable) {
      return new Readout<>(Optional.empty(), Optional.of(unreadable.fault()));
    }
  }

  /** Whether nothing was read yet. */
  public boolean isNothing() {
    return found.isEmpty() && fault.isEmpty();
  }
}
