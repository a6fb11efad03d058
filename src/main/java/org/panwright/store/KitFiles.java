package org.panwright.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;

/**
 * Opens and saves kits.
 *
 * <p>Opening never changes anything on the disk. Saving never leaves a file with less than it held:
 * the content before the save stays beside it as {@code NAME.backup}; a file somebody else changed
 * meanwhile is not touched; an unreadable file in the way is given another name first. May be used
 * from any thread.
 */
public final class KitFiles {
  /** The ending of kit files. */
  public static final String ENDING = ".kit.json";

  private static final String BACKUP_ENDING = ".backup";
  private static final long MOST_BYTES = 64L * 1024 * 1024;

  private final KitReader reader;
  private final SafeFile safe;

  /**
   * @param library gives paints without figures of their own their properties
   */
  public KitFiles(PigmentLibrary library) {
    this(library, Disk.REAL);
  }

  KitFiles(PigmentLibrary library, Disk disk) {
    this.reader = new KitReader(library);
    this.safe = new SafeFile(disk);
  }

  /**
   * The kit in a file, as far as it can be understood; what could not be is told in the notices.
   *
   * @throws FileProblemException if the file cannot be read as a kit at all; if a readable backup
   *     stands beside it, the problem names that too
   */
  public OpenedKit open(Path file) throws FileProblemException {
    try {
      return read(file);
    } catch (FileProblemException e) {
      Path backup = backupOf(file);
      if (e.problem() instanceof FileProblem.CannotRead || !isKit(backup)) {
        throw e;
      }
      throw new FileProblemException(new FileProblem.WithBackup(e.problem(), backup), e);
    }
  }

  /**
   * Saves the kit over the file it came from.
   *
   * @return what to hand to the next save
   * @throws FileProblemException if it is for looking only, if the file was changed by somebody
   *     else, or if it cannot be written; the file is then as it was
   * @throws IllegalArgumentException if it never had a file
   */
  public OpenedKit save(OpenedKit opened, Kit kit) throws FileProblemException {
    Path file =
        opened.file().orElseThrow(() -> new IllegalArgumentException("the kit has no file yet"));
    return saveAs(opened, kit, file);
  }

  /**
   * Saves the kit into a file, which may be the one it came from.
   *
   * <p>A kit that is there already is replaced and stays as the backup; a file that is no kit, or
   * that cannot be read, is given another name, which a notice tells.
   *
   * @return what to hand to the next save
   * @throws FileProblemException as {@link #save}, and if a kit of a later version is in the way
   */
  public synchronized OpenedKit saveAs(OpenedKit opened, Kit kit, Path file)
      throws FileProblemException {
    boolean ownFile = opened.file().isPresent() && isSame(opened.file().get(), file);
    if (ownFile && opened.forLooking()) {
      throw new FileProblemException(new FileProblem.OpenedForLooking(file));
    }
    List<FileProblem> notices = new ArrayList<>();
    Optional<byte[]> before = contentOf(file);
    if (before.isPresent()) {
      if (ownFile) {
        requireUnchanged(opened, file, before.get());
        safe.write(backupOf(file), before.get());
      } else {
        makeWay(file, before.get()).ifPresent(notices::add);
      }
    }
    byte[] bytes =
        JsonLayout.text(KitWriter.write(kit, opened.keepsake())).getBytes(StandardCharsets.UTF_8);
    safe.write(file, bytes);
    return new OpenedKit(
        Optional.of(file),
        kit,
        notices,
        false,
        opened.keepsake(),
        Optional.of(Fingerprint.of(bytes)));
  }

  /** Where the content before the last save is kept. */
  public static Path backupOf(Path file) {
    return file.resolveSibling(file.getFileName() + BACKUP_ENDING);
  }

  private OpenedKit read(Path file) throws FileProblemException {
    byte[] bytes = contentOf(file).orElseThrow(() -> missing(file));
    KitReader.Result result = reader.read(file, JsonSource.parse(file, bytes));
    return new OpenedKit(
        Optional.of(file),
        result.kit(),
        result.notices(),
        result.newer(),
        result.keepsake(),
        Optional.of(Fingerprint.of(bytes)));
  }

  private boolean isKit(Path file) {
    try {
      read(file);
      return true;
    } catch (FileProblemException e) {
      return false;
    }
  }

  private static void requireUnchanged(OpenedKit opened, Path file, byte[] now)
      throws FileProblemException {
    if (!opened.fingerprint().equals(Optional.of(Fingerprint.of(now)))) {
      throw new FileProblemException(new FileProblem.ChangedElsewhere(file));
    }
  }

  /** Secures what stands where another kit is to be saved; tells if it had to be renamed. */
  private Optional<FileProblem> makeWay(Path file, byte[] content) throws FileProblemException {
    try {
      if (read(file).forLooking()) {
        throw new FileProblemException(new FileProblem.NewerInTheWay(file));
      }
    } catch (FileProblemException e) {
      if (e.problem() instanceof FileProblem.NewerInTheWay) {
        throw e;
      }
      return Optional.of(new FileProblem.MovedAside(file, moveAside(file)));
    }
    safe.write(backupOf(file), content);
    return Optional.empty();
  }

  private static Path moveAside(Path file) throws FileProblemException {
    int number = 1;
    while (Files.exists(aside(file, number))) {
      number++;
    }
    try {
      return Files.move(file, aside(file, number));
    } catch (IOException e) {
      throw new FileProblemException(
          new FileProblem.CannotWrite(file, String.valueOf(e.getMessage())), e);
    }
  }

  private static Path aside(Path file, int number) {
    return file.resolveSibling(file.getFileName() + ".unreadable-" + number);
  }

  private static boolean isSame(Path a, Path b) {
    try {
      return SafeFile.target(a).equals(SafeFile.target(b));
    } catch (IOException e) {
      return a.toAbsolutePath().normalize().equals(b.toAbsolutePath().normalize());
    }
  }

  private static Optional<byte[]> contentOf(Path file) throws FileProblemException {
    try {
      if (Files.exists(file) && Files.size(file) > MOST_BYTES) {
        throw new FileProblemException(
            new FileProblem.TooLarge(file, Files.size(file), MOST_BYTES));
      }
      return Optional.of(Files.readAllBytes(file));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    } catch (AccessDeniedException e) {
      throw new FileProblemException(new FileProblem.CannotRead(file, ""), e);
    } catch (IOException e) {
      throw new FileProblemException(
          new FileProblem.CannotRead(file, String.valueOf(e.getMessage())), e);
    }
  }

  private static FileProblemException missing(Path file) {
    return new FileProblemException(new FileProblem.Missing(file));
  }
}
