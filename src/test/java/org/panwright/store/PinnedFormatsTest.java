package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Files of every version of the format, as the program of that day wrote them. They are never
 * written anew: a file in a drawer must open for ever.
 */
class PinnedFormatsTest {
  @TempDir Path folder;

  /** Pinned 2026-11-25, the first version. */
  @Test
  void versionOneOpensWholeAndIsSavedAsItWas() throws Exception {
    Path file = folder.resolve("pinned.kit.json");
    byte[] pinned = content("pinned-v1.kit.json");
    Files.write(file, pinned);
    KitFiles files = new KitFiles(PigmentLibraryReader.read());
    OpenedKit opened = files.open(file);
    assertThat(opened.notices()).isEmpty();
    assertThat(opened.kit()).isEqualTo(SampleKit.KIT);
    files.save(opened, opened.kit());
    assertThat(JsonSource.parse(file, Files.readAllBytes(file)))
        .isEqualTo(JsonSource.parse(file, pinned));
  }

  private static byte[] content(String name) throws Exception {
    try (InputStream in = PinnedFormatsTest.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    }
  }
}
