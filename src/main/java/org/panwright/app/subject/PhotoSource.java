package org.panwright.app.subject;

import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleConsumer;

/** Where photos come from; an interface so that the view can be tried without files. */
interface PhotoSource {
  /**
   * Reads a photo; takes a second or so for a large one.
   *
   * @param progress told the share done, 0..1
   * @param stopped asked now and then
   * @throws UnreadablePhotoException if there is no photo to be had
   * @throws java.util.concurrent.CancellationException if stopped
   */
  Photo read(Path file, DoubleConsumer progress, BooleanSupplier stopped)
      throws UnreadablePhotoException;

  /** Says why a photo cannot be read, in a sentence for the painter. */
  final class UnreadablePhotoException extends Exception {
    private static final long serialVersionUID = 1;

    UnreadablePhotoException(String sentence) {
      super(sentence);
    }
  }
}
