package org.panwright.app;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.FutureTask;
import org.panwright.app.faults.Log;
import org.panwright.app.files.FirstKit;
import org.panwright.app.settings.Remembered;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.DemoKit;
import org.panwright.store.KitFiles;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.store.SettingsFile;

/**
 * What a window needs before it can be built and that needs no toolkit to be read.
 *
 * @param library the pigments
 * @param demo the kit to learn with
 * @param remembered the settings
 * @param first what is open at first
 */
record Opening(PigmentLibrary library, Kit demo, Remembered remembered, FirstKit first) {

  /**
   * Starts reading on a thread of its own, beside the toolkit's start.
   *
   * @param asked the file to open, if one was named
   */
  static FutureTask<Opening> begin(
      UserFolders folders, Workers workers, Log log, Optional<Path> asked) {
    FutureTask<Opening> reading = new FutureTask<>(() -> read(folders, workers, log, asked));
    Thread thread = new Thread(reading, "panwright-reading");
    thread.setDaemon(true);
    thread.start();
    return reading;
  }

  private static Opening read(UserFolders folders, Workers workers, Log log, Optional<Path> asked) {
    PigmentLibrary library = PigmentLibraryReader.read();
    Kit demo = DemoKit.read(library);
    Remembered remembered =
        new Remembered(
            new SettingsFile(folders.settings().resolve("settings.json")),
            workers.clock(),
            log::note);
    FirstKit first = FirstKit.read(new KitFiles(library), asked, remembered.settings(), demo);
    return new Opening(library, demo, remembered, first);
  }
}
