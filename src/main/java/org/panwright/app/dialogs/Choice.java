package org.panwright.app.dialogs;

/**
 * One answer to a question.
 *
 * @param label the action it stands for, as on its button
 * @param role what part it plays
 * @param value what the asker gets
 */
public record Choice<T>(String label, Role role, T value) {
  /** The part an answer plays among the others. */
  public enum Role {
    /** What is usually wanted; Enter picks it. */
    USUAL,
    /** Another way to go on. */
    OTHER,
    /** Nothing is to happen; Escape picks it. */
    LEAVE
  }

  /** What is usually wanted. */
  public static <T> Choice<T> usual(String label, T value) {
    return new Choice<>(label, Role.USUAL, value);
  }

  /** Another way to go on. */
  public static <T> Choice<T> other(String label, T value) {
    return new Choice<>(label, Role.OTHER, value);
  }

  /** Nothing is to happen. */
  public static <T> Choice<T> leave(String label, T value) {
    return new Choice<>(label, Role.LEAVE, value);
  }
}
