package org.panwright.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Locale;
import java.util.UUID;
import org.panwright.kit.FileProblem;

/**
 * Writes a whole file so that at every moment either the old or the new content is there, even if
 * the power fails.
 *
 * <p>The bytes go into a new file of a unique name beside the target, are forced to the disk, and
 * take the target's place in one move. A link is followed, the target's permissions are kept, a
 * target marked read-only is left alone. The temporary file never stays behind after a failure that
 * the program survives.
 */
public final class SafeFile {
  private final Disk disk;

  /** A writer to the real disk. */
  public SafeFile() {
    this(Disk.REAL);
  }

  SafeFile(Disk disk) {
    this.disk = disk;
  }

  /**
   * Puts {@code bytes} into {@code file}, making it if needed; its folder must exist.
   *
   * @throws FileProblemException if that cannot be done; the file is then as it was
   */
  public void write(Path file, byte[] bytes) throws FileProblemException {
    Path temporary = null;
    try {
      Path target = target(file);
      if (Files.exists(target) && !disk.mayChange(target)) {
        throw new FileProblemException(new FileProblem.FileProtected(file));
      }
      temporary = target.resolveSibling(temporaryName(target));
      try (Disk.Sink sink = disk.create(temporary)) {
        sink.write(bytes);
        sink.force();
      }
      takeOverPermissions(target, temporary);
      disk.moveOver(temporary, target);
      forceFolder(target);
    } catch (IOException | ReadOnlyFileSystemException e) {
      discard(temporary);
      throw new FileProblemException(problem(file, e), e);
    }
  }

  /** The file a path leads to when links are followed, whether that file exists or not. */
  static Path target(Path file) throws IOException {
    Path target = file.toAbsolutePath();
    if (Files.exists(target)) {
      return target.toRealPath();
    }
    return Files.isSymbolicLink(target)
        ? target.resolveSibling(Files.readSymbolicLink(target)).normalize()
        : target;
  }

  private static String temporaryName(Path target) {
    // Cut short, because the target's name may already be as long as a name can be.
    String name = target.getFileName().toString();
    int start = name.offsetByCodePoints(0, Math.min(20, name.codePointCount(0, name.length())));
    return "." + name.substring(0, start) + "." + UUID.randomUUID() + ".tmp";
  }

  private static void takeOverPermissions(Path target, Path temporary) throws IOException {
    PosixFileAttributeView view =
        Files.getFileAttributeView(temporary, PosixFileAttributeView.class);
    if (view != null && Files.exists(target)) {
      view.setPermissions(Files.getPosixFilePermissions(target));
    }
  }

  /** Makes the move itself lasting; not every system can, and then the move stands as it is. */
  private static void forceFolder(Path target) {
    try (FileChannel folder = FileChannel.open(target.getParent(), StandardOpenOption.READ)) {
      folder.force(true);
    } catch (IOException e) {
      // The file is whole already; only its survival of a power cut in this second is unsure.
      return;
    }
  }

  private static void discard(Path temporary) {
    try {
      if (temporary != null) {
        Files.deleteIfExists(temporary);
      }
    } catch (IOException e) {
      // The first failure is the one to tell about.
      return;
    }
  }

  private static FileProblem problem(Path file, Exception e) {
    String says = e.getMessage() == null ? "" : e.getMessage();
    if (e instanceof AccessDeniedException || e instanceof ReadOnlyFileSystemException) {
      return new FileProblem.FolderClosed(file);
    }
    if (e instanceof NoSuchFileException) {
      return new FileProblem.FolderMissing(file);
    }
    String lower = says.toLowerCase(Locale.ROOT);
    if (lower.contains("no space left") || lower.contains("not enough space")) {
      return new FileProblem.DiskFull(file);
    }
    return new FileProblem.CannotWrite(file, says);
  }
}
