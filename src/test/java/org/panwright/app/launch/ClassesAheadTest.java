package org.panwright.app.launch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.JarOutputStream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClassesAheadTest {
  /** Takes the program's classes from one place and everything else from the tests' own loader. */
  private static final class OneJar extends URLClassLoader {
    OneJar(Path place) throws IOException {
      super(new URL[] {place.toUri().toURL()}, ClassesAheadTest.class.getClassLoader());
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
      if (!name.startsWith("org.panwright.")) {
        return super.loadClass(name, resolve);
      }
      Class<?> loaded = findLoadedClass(name);
      return loaded == null ? findClass(name) : loaded;
    }

    boolean hasLoaded(Class<?> like) {
      return findLoadedClass(like.getName()) != null;
    }
  }

  @Test
  void classesOfAJarAreLoadedBeforeAnybodyAsks(@TempDir Path folder) throws Exception {
    Path jar = folder.resolve("some program.jar");
    try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar))) {
      put(out, ClassesAhead.class);
      put(out, ClassArchive.class);
      out.putNextEntry(new ZipEntry("words.txt"));
      out.closeEntry();
    }
    try (OneJar loader = new OneJar(jar)) {
      Class<?> beside = loader.loadClass(ClassesAhead.class.getName());
      assertThat(loader.hasLoaded(ClassArchive.class)).isFalse();
      assertThat(ClassesAhead.load(beside)).isEqualTo(2);
      assertThat(loader.hasLoaded(ClassArchive.class)).isTrue();
    }
  }

  @Test
  void classesOfAFolderAreLoadedAndOnesThatCannotBeAreLeft(@TempDir Path folder) throws Exception {
    copy(folder, ClassesAhead.class);
    copy(folder, ClassArchive.class);
    Files.writeString(folder.resolve("Broken.class"), "no class at all");
    try (OneJar loader = new OneJar(folder)) {
      Class<?> beside = loader.loadClass(ClassesAhead.class.getName());
      assertThat(ClassesAhead.load(beside)).isEqualTo(3);
      assertThat(loader.hasLoaded(ClassArchive.class)).isTrue();
    }
  }

  private static void put(JarOutputStream out, Class<?> copied) throws IOException {
    out.putNextEntry(new ZipEntry(file(copied)));
    try (InputStream in = copied.getClassLoader().getResourceAsStream(file(copied))) {
      in.transferTo(out);
    }
    out.closeEntry();
  }

  private static void copy(Path folder, Class<?> copied) throws IOException {
    Path file = folder.resolve(file(copied));
    Files.createDirectories(file.getParent());
    try (InputStream in = copied.getClassLoader().getResourceAsStream(file(copied))) {
      Files.copy(in, file);
    }
  }

  private static String file(Class<?> copied) {
    return copied.getName().replace('.', '/') + ".class";
  }
}
