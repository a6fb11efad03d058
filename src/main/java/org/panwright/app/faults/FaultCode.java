package org.panwright.app.faults;

import java.util.Locale;

/** A short code for a fault: the same for the same fault in the same place of the program. */
public final class FaultCode {
  private FaultCode() {}

  /** The code, four letters or digits, a hyphen, four more; for example {@code 1A7F-03CE}. */
  public static String of(Throwable fault) {
    Throwable root = fault;
    while (root.getCause() != null && root.getCause() != root) {
      root = root.getCause();
    }
    int hash = root.getClass().getName().hashCode();
    for (StackTraceElement frame : root.getStackTrace()) {
      if (frame.getClassName().startsWith("org.panwright.")) {
        hash = 31 * hash + (frame.getClassName() + "." + frame.getMethodName()).hashCode();
      }
    }
    String digits = String.format(Locale.ROOT, "%08X", hash);
    return digits.substring(0, 4) + "-" + digits.substring(4);
  }
}
