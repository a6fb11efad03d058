package org.panwright.command;

/** A command was called in a way it cannot follow; the message is one sentence for the user. */
final class BadUseException extends Exception {
  BadUseException(String sentence) {
    super(sentence);
  }
}
