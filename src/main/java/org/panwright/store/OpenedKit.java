package org.panwright.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;

/**
 * A kit together with what ties it to its file. Whoever shows the kit keeps this as well and hands
 * it back at the next save.
 */
public final class OpenedKit {
  private final Optional<Path> file;
  private final Kit kit;
  private final List<FileProblem> notices;
  private final boolean forLooking;
  private final Keepsake keepsake;
  private final Optional<Fingerprint> fingerprint;

  OpenedKit(
      Optional<Path> file,
      Kit kit,
      List<FileProblem> notices,
      boolean forLooking,
      Keepsake keepsake,
      Optional<Fingerprint> fingerprint) {
    this.file = Objects.requireNonNull(file, "file");
    this.kit = Objects.requireNonNull(kit, "kit");
    this.notices = List.copyOf(notices);
    this.forLooking = forLooking;
    this.keepsake = Objects.requireNonNull(keepsake, "keepsake");
    this.fingerprint = Objects.requireNonNull(fingerprint, "fingerprint");
  }

  /** A kit that has no file yet. */
  public static OpenedKit unsaved(Kit kit) {
    return new OpenedKit(
        Optional.empty(), kit, List.of(), false, Keepsake.NOTHING, Optional.empty());
  }

  /** The file it was read from or last saved to; empty if it was never saved. */
  public Optional<Path> file() {
    return file;
  }

  /** The kit as it is in the file. */
  public Kit kit() {
    return kit;
  }

  /** What the painter should be told now; empty if all went well. */
  public List<FileProblem> notices() {
    return notices;
  }

  /** Whether it is for looking only: it can be saved under another name, not over its file. */
  public boolean forLooking() {
    return forLooking;
  }

  Keepsake keepsake() {
    return keepsake;
  }

  Optional<Fingerprint> fingerprint() {
    return fingerprint;
  }
}
