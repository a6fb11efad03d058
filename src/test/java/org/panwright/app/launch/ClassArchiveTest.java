package org.panwright.app.launch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Properties;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClassArchiveTest {
  @TempDir Path folder;
  private Path jar;
  private Path library;
  private final Properties system = new Properties();

  @BeforeEach
  void layOutTheProgram() throws IOException {
    Files.createDirectories(folder.resolve("lib"));
    jar = Files.writeString(folder.resolve("program.jar"), "program");
    library = Files.writeString(folder.resolve("lib").resolve("library.jar"), "library");
    system.setProperty("java.class.path", jar.toString());
    system.setProperty("java.home", "/jvm/17");
    system.setProperty("java.vm.version", "17.0.1");
  }

  @Test
  void theSameProgramHasTheSameArchive() {
    assertThat(archive().file()).isEqualTo(archive().file());
  }

  @Test
  void aChangedProgramHasAnotherArchive() throws IOException {
    Path before = archive().file();
    Files.writeString(jar, "program, mended");
    assertThat(archive().file()).isNotEqualTo(before);
  }

  @Test
  void aLibraryOfAnotherTimeHasAnotherArchive() throws IOException {
    Path before = archive().file();
    Files.setLastModifiedTime(library, FileTime.from(Instant.EPOCH));
    assertThat(archive().file()).isNotEqualTo(before);
  }

  @Test
  void anotherJvmHasAnotherArchive() {
    Path before = archive().file();
    system.setProperty("java.vm.version", "17.0.2");
    assertThat(archive().file()).isNotEqualTo(before);
  }

  @Test
  void classesInFoldersHaveNone() {
    system.setProperty("java.class.path", folder + java.io.File.pathSeparator + jar);
    assertThat(ClassArchive.in(folder, system)).isEmpty();
    system.setProperty("java.class.path", folder.toString());
    assertThat(ClassArchive.in(folder, system)).isEmpty();
  }

  @Test
  void aDraftCountsOnlyOnceItIsKept() throws IOException {
    ClassArchive archive = archive();
    Path draft = Files.writeString(archive.draft(1), "classes");
    assertThat(archive.isThere()).isFalse();
    archive.keep(draft);
    assertThat(archive.file()).hasContent("classes");
    assertThat(draft).doesNotExist();
  }

  @Test
  void aDraftThatWasNeverWrittenChangesNothing() throws IOException {
    ClassArchive archive = archive();
    archive.keep(archive.draft(1));
    assertThat(archive.isThere()).isFalse();
  }

  @Test
  void archivesOfLongAgoGo() throws IOException {
    ClassArchive archive = archive();
    Path draft = Files.writeString(archive.draft(1), "classes");
    Path old = Files.writeString(draft.resolveSibling("classes-0.jsa"), "old");
    Path recent = Files.writeString(draft.resolveSibling("classes-1.jsa"), "recent");
    Files.setLastModifiedTime(old, FileTime.from(Instant.EPOCH));
    archive.keep(draft);
    assertThat(old).doesNotExist();
    assertThat(recent).exists();
  }

  private ClassArchive archive() {
    return ClassArchive.in(folder.resolve("cache"), system).orElseThrow();
  }
}
