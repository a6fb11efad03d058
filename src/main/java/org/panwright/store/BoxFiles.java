package org.panwright.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.panwright.kit.Box;
import org.panwright.kit.FileProblem;
import org.panwright.kit.PanKind;

/**
 * Boxes as files of their own, to be shared: a box with the kinds of pans in it, written as in a
 * kit. What was in the file before stays beside it as {@code NAME.backup}.
 */
public final class BoxFiles {
  /** The ending of box files. */
  public static final String ENDING = ".box.json";

  private static final long MOST_BYTES = 4L * 1024 * 1024;

  private final SafeFile safe = new SafeFile();

  /**
   * What a box file holds.
   *
   * @param boxes one or more
   * @param pans the kinds of pans they name
   * @param notices what had to be left out or put right
   */
  public record Shared(List<Box> boxes, List<PanKind> pans, List<FileProblem> notices) {
    public Shared {
      boxes = List.copyOf(boxes);
      pans = List.copyOf(pans);
      notices = List.copyOf(notices);
    }
  }

  /**
   * Writes a box.
   *
   * @param pans the kinds of pans of its kit
   * @throws FileProblemException if it cannot be written; the file is then as it was
   */
  public void write(Path file, Box box, List<PanKind> pans) throws FileProblemException {
    ObjectNode tree = KitWriter.box(box, pans);
    if (Files.exists(file)) {
      safe.write(KitFiles.backupOf(file), content(file));
    }
    safe.write(file, JsonLayout.text(tree).getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Reads the boxes of a file.
   *
   * @throws FileProblemException if it cannot be read or holds no box that can be used
   */
  public Shared read(Path file) throws FileProblemException {
    JsonNode tree = JsonSource.parse(file, content(file));
    if (!tree.isObject() || !tree.path("schemaVersion").isNumber() || !tree.has("boxes")) {
      throw new FileProblemException(new FileProblem.NotABox(file));
    }
    Reading reading = new Reading(file);
    Field root = Field.root(tree);
    try {
      List<PanKind> pans = new PanReader(reading, Address.KIT).pans(root.at("pans"));
      List<Box> boxes = new BoxReader(reading, Address.KIT, pans).boxes(root.at("boxes"));
      if (boxes.isEmpty()) {
        FileProblem why =
            reading.notices().isEmpty() ? new FileProblem.NotABox(file) : reading.notices().get(0);
        throw new FileProblemException(why);
      }
      return new Shared(boxes, pans, reading.notices());
    } catch (BadFieldException e) {
      throw new FileProblemException(new FileProblem.BadField(file, e.path(), e.fault()), e);
    }
  }

  private static byte[] content(Path file) throws FileProblemException {
    try {
      if (Files.exists(file) && Files.size(file) > MOST_BYTES) {
        throw new FileProblemException(
            new FileProblem.TooLarge(file, Files.size(file), MOST_BYTES));
      }
      return Files.readAllBytes(file);
    } catch (NoSuchFileException e) {
      throw new FileProblemException(new FileProblem.Missing(file), e);
    } catch (IOException e) {
      throw new FileProblemException(
          new FileProblem.CannotRead(file, String.valueOf(e.getMessage())), e);
    }
  }
}
