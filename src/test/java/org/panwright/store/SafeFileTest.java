package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.panwright.kit.FileProblem;

class SafeFileTest {
  private static final byte[] NEW = "new content".getBytes(StandardCharsets.UTF_8);

  @TempDir Path folder;

  @Test
  void makesAFile() throws Exception {
    Path file = folder.resolve("a.txt");
    new SafeFile().write(file, NEW);
    assertThat(file).hasBinaryContent(NEW);
    assertThat(namesInFolder()).containsExactly("a.txt");
  }

  @Test
  void replacesAFileWhole() throws Exception {
    Path file = Files.writeString(folder.resolve("a.txt"), "something much longer than the new");
    new SafeFile().write(file, NEW);
    assertThat(file).hasBinaryContent(NEW);
  }

  @Test
  void aNameAsLongAsNamesCanBeIsNoTrouble() throws Exception {
    Path file = folder.resolve("é".repeat(120) + ".json");
    new SafeFile().write(file, NEW);
    assertThat(file).hasBinaryContent(NEW);
  }

  @Test
  void followsALink() throws Exception {
    Path real = Files.writeString(folder.resolve("real.txt"), "old");
    Path link = Files.createSymbolicLink(folder.resolve("link.txt"), Path.of("real.txt"));
    new SafeFile().write(link, NEW);
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(real).hasBinaryContent(NEW);
  }

  @Test
  void followsALinkToNothingYet() throws Exception {
    Path link = Files.createSymbolicLink(folder.resolve("link.txt"), Path.of("real.txt"));
    new SafeFile().write(link, NEW);
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(folder.resolve("real.txt")).hasBinaryContent(NEW);
  }

  @Test
  void keepsPermissions() throws Exception {
    Path file = Files.writeString(folder.resolve("a.txt"), "old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw---x"));
    new SafeFile().write(file, NEW);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-rw---x");
  }

  @ParameterizedTest
  @EnumSource(FailingDisk.Step.class)
  void aFullDiskLeavesTheOldContentAndNoLitter(FailingDisk.Step step) throws Exception {
    Path file = Files.writeString(folder.resolve("a.txt"), "old");
    IOException full = new IOException("No space left on device");
    SafeFile safe = new SafeFile(new FailingDisk(step, full, 0));
    assertThatThrownBy(() -> safe.write(file, NEW))
        .isInstanceOfSatisfying(
            FileProblemException.class,
            e -> assertThat(e.problem()).isEqualTo(new FileProblem.DiskFull(file)));
    assertThat(file).hasContent("old");
    assertThat(namesInFolder()).containsExactly("a.txt");
  }

  @Test
  void aBrokenDiskIsToldInItsOwnWords() {
    Path file = folder.resolve("a.txt");
    SafeFile safe =
        new SafeFile(
            new FailingDisk(FailingDisk.Step.FORCE, new IOException("Input/output error"), 0));
    assertThatThrownBy(() -> safe.write(file, NEW))
        .isInstanceOfSatisfying(
            FileProblemException.class,
            e ->
                assertThat(e.problem())
                    .isEqualTo(new FileProblem.CannotWrite(file, "Input/output error")));
    assertThat(file).doesNotExist();
  }

  @Test
  void aFolderThatMayNotBeChangedIsTold() {
    Path file = folder.resolve("a.txt");
    SafeFile safe =
        new SafeFile(
            new FailingDisk(
                FailingDisk.Step.CREATE, new AccessDeniedException(file.toString()), 0));
    assertThatThrownBy(() -> safe.write(file, NEW))
        .isInstanceOfSatisfying(
            FileProblemException.class,
            e -> assertThat(e.problem()).isEqualTo(new FileProblem.FolderClosed(file)));
  }

  /** Not by real permissions: a test may run as a user to whom none apply. */
  @Test
  void aFileMarkedReadOnlyIsLeftAlone() throws Exception {
    Path file = Files.writeString(folder.resolve("a.txt"), "old");
    Disk guarded =
        new Disk() {
          @Override
          public Sink create(Path fresh) throws IOException {
            return REAL.create(fresh);
          }

          @Override
          public boolean mayChange(Path asked) {
            return !asked.endsWith("a.txt");
          }

          @Override
          public void moveOver(Path from, Path to) throws IOException {
            REAL.moveOver(from, to);
          }
        };
    assertThatThrownBy(() -> new SafeFile(guarded).write(file, NEW))
        .isInstanceOfSatisfying(
            FileProblemException.class,
            e -> assertThat(e.problem()).isEqualTo(new FileProblem.FileProtected(file)));
    assertThat(file).hasContent("old");
  }

  @Test
  void aMissingFolderIsTold() {
    Path file = folder.resolve("nowhere").resolve("a.txt");
    assertThatThrownBy(() -> new SafeFile().write(file, NEW))
        .isInstanceOfSatisfying(
            FileProblemException.class,
            e -> assertThat(e.problem()).isEqualTo(new FileProblem.FolderMissing(file)));
  }

  private List<String> namesInFolder() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).toList();
    }
  }
}
