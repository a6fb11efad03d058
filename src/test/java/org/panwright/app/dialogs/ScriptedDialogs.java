package org.panwright.app.dialogs;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Dialogs for tests: answers are laid out beforehand, what was said is kept. */
public final class ScriptedDialogs implements Dialogs {
  private final Deque<String> answers = new ArrayDeque<>();
  private final Deque<Path> files = new ArrayDeque<>();
  private final List<String> said = new ArrayList<>();

  /** The label of the answer to the next question. */
  public ScriptedDialogs answer(String label) {
    answers.add(label);
    return this;
  }

  /** The file chosen next. */
  public ScriptedDialogs choose(Path file) {
    files.add(file);
    return this;
  }

  /** Title and sentence of everything told or asked, in order. */
  public List<String> said() {
    return said;
  }

  @Override
  public void tell(String title, String sentence) {
    said.add(title + ": " + sentence);
  }

  @Override
  public <T> T ask(String title, String sentence, List<Choice<T>> choices) {
    said.add(title + ": " + sentence);
    String wanted = answers.remove();
    return choices.stream()
        .filter(choice -> choice.label().equals(wanted))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no answer " + wanted + " among " + choices))
        .value();
  }

  /**
   * Accepts a form if its accepting label is the next answer, does what else it can do if that is;
   * any other answer leaves it.
   */
  @Override
  public <R> Optional<R> fillIn(Form<R> form) {
    if (answers.isEmpty()) {
      throw new AssertionError("no form expected: " + form.title());
    }
    while (form.further().map(Form.Further::label).equals(Optional.ofNullable(answers.peek()))) {
      answers.remove();
      form.further().filter(further -> form.ready().getValue()).ifPresent(f -> f.work().run());
    }
    boolean accepted = answers.remove().equals(form.accept()) && form.ready().getValue();
    return accepted ? Optional.of(form.result().get()) : Optional.empty();
  }

  @Override
  public Optional<Path> chooseToOpen(FileKind kind, Optional<Path> folder) {
    return Optional.ofNullable(files.poll());
  }

  @Override
  public Optional<Path> chooseToSave(FileKind kind, Optional<Path> folder, String suggestedName) {
    return Optional.ofNullable(files.poll());
  }
}
