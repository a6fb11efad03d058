package org.panwright.command;

/** A command was called in a way it cannot follow; the message is one sentence for the user. */
public final class BadUseException extends Exception {
  private static final long serialVersionUID = 1;

  /** A refusal with its sentence. */
  public BadUseException(String sentence) {
    super(sentence);
  }
}
