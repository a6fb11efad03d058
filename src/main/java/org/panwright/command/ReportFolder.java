package org.panwright.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.panwright.print.PdfWriter;
import org.panwright.store.FileProblemException;
import org.panwright.store.SafeFile;
import org.panwright.words.CommandWords;

/** The folder of a report; files of an earlier report are replaced, all others left alone. */
record ReportFolder(Path path) {
  /** Within this many first characters our texts name the program. */
  private static final int HEAD = 60;

  /**
   * Writes the files, making the folder if needed; none of them if one would take the place of a
   * file that no report has written.
   *
   * @param files contents by name
   */
  void write(Map<String, byte[]> files) throws BadUseException, FileProblemException {
    try {
      Files.createDirectories(path);
    } catch (IOException e) {
      throw new BadUseException(CommandWords.noFolder(path));
    }
    for (String name : files.keySet()) {
      if (Files.exists(path.resolve(name)) && !isOurs(path.resolve(name))) {
        throw new BadUseException(CommandWords.notOurs(name, path));
      }
    }
    SafeFile safe = new SafeFile();
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      safe.write(path.resolve(file.getKey()), file.getValue());
    }
  }

  private static boolean isOurs(Path file) {
    try {
      byte[] bytes = Files.readAllBytes(file);
      if (file.getFileName().toString().endsWith(".pdf")) {
        return PdfWriter.wrote(bytes);
      }
      String head = new String(bytes, 0, Math.min(HEAD, bytes.length), StandardCharsets.ISO_8859_1);
      return head.contains(CommandWords.PROGRAM);
    } catch (IOException e) {
      return false;
    }
  }
}
