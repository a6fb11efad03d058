package org.panwright.print;

/**
 * One paper as the painter wants it: its kind and everything chosen about it.
 *
 * <p>A new kind of paper is a record that implements this, a {@link PaperKind}, and its words.
 */
public interface PaperOrder {
  /** What is ordered. */
  PaperKind kind();

  /** What it is printed on. */
  PaperFormat paper();

  /** The same order on another paper. */
  PaperOrder withPaper(PaperFormat changed);

  /**
   * Makes the paper. Any thread.
   *
   * @throws IllegalArgumentException if the kit lacks what the occasion names, or a paint is
   *     neither measured nor made of pigments in the library
   */
  Made make(Occasion occasion);
}
