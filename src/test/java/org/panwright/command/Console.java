package org.panwright.command;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.DemoKit;
import org.panwright.store.FileProblemException;
import org.panwright.store.KitFiles;
import org.panwright.store.OpenedKit;
import org.panwright.store.PigmentLibraryReader;

/** A console to run commands on, and kits to run them with. */
final class Console {
  static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();

  private final ByteArrayOutputStream outBytes = new ByteArrayOutputStream();
  private final ByteArrayOutputStream errBytes = new ByteArrayOutputStream();
  final PrintStream out = new PrintStream(outBytes, true, StandardCharsets.UTF_8);
  final PrintStream err = new PrintStream(errBytes, true, StandardCharsets.UTF_8);

  int run(String... arguments) {
    return CommandLine.run(arguments, out, err);
  }

  String said() {
    return outBytes.toString(StandardCharsets.UTF_8);
  }

  String complained() {
    return errBytes.toString(StandardCharsets.UTF_8);
  }

  /** The demo kit in a file of the folder. */
  static Path demo(Path folder) throws FileProblemException {
    return saved(DemoKit.read(LIBRARY), folder);
  }

  static Path saved(Kit kit, Path folder) throws FileProblemException {
    Path file = folder.resolve("kit.kit.json");
    new KitFiles(LIBRARY).saveAs(OpenedKit.unsaved(kit), kit, file);
    return file;
  }
}
