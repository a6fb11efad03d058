package org.panwright.app;

import java.nio.file.Path;
import javafx.application.Application;

/**
 * Takes the pictures of the guide from the running program on the demo kit: {@code java -cp
 * "target/panwright.jar:target/lib/*" org.panwright.app.Screenshots docs/images}. It needs a
 * display; one in memory will do ({@code xvfb-run}).
 */
public final class Screenshots {
  private Screenshots() {}

  /** Takes all pictures into the folder named first, or those whose names follow it. */
  public static void main(String[] arguments) {
    if (arguments.length == 0) {
      System.err.println("usage: Screenshots FOLDER [NAME…]");
      System.exit(2);
    }
    Application.launch(Photographer.class, arguments);
  }

  /** The file of a picture. */
  static Path file(Path folder, String name) {
    return folder.resolve(name + ".png");
  }
}
