package org.panwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;

/**
 * The kit shown at the first start: an invented painter's, kept in {@code demo-data} and packed
 * into the program.
 */
public final class DemoKit {
  private static final String RESOURCE = "demo/harbour.kit.json";

  private DemoKit() {}

  /**
   * The demo kit.
   *
   * @throws IllegalStateException if the program lacks it or it is not in order
   */
  public static Kit read(PigmentLibrary library) {
    try (InputStream in = DemoKit.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its kit " + RESOURCE);
      }
      Path name = Path.of("harbour.kit.json");
      KitReader.Result result =
          new KitReader(library).read(name, JsonSource.parse(name, in.readAllBytes()));
      if (!result.notices().isEmpty()) {
        throw new IllegalStateException("the demo kit is not in order: " + result.notices());
      }
      return result.kit();
    } catch (FileProblemException e) {
      throw new IllegalStateException("the demo kit is not in order: " + e.problem(), e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
