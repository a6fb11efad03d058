package org.panwright.paint;

/**
 * Where a group of figures comes from and how far to trust it.
 *
 * @param source the publication, or "from memory"
 * @param note what it says, in a few words; may be empty
 * @param confidence A published and read, B well known from several sources, C remembered or
 *     estimated
 */
public record Evidence(String source, String note, Confidence confidence) {
  /** The grade of a source. */
  public enum Confidence {
    A,
    B,
    C
  }
}
