package org.panwright.store;

import org.panwright.kit.FileProblem;

/** A file could not be opened or saved; what the painter is told is made from the problem. */
public final class FileProblemException extends Exception {
  private final transient FileProblem problem;

  public FileProblemException(FileProblem problem) {
    super(problem.toString());
    this.problem = problem;
  }

  /** Because of a fault reported by the system. */
  public FileProblemException(FileProblem problem, Throwable cause) {
    super(problem.toString(), cause);
    this.problem = problem;
  }

  /** What went wrong. */
  public FileProblem problem() {
    return problem;
  }
}
