package org.panwright.app.hand;

import java.util.Optional;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.DataFormat;
import javafx.scene.input.Dragboard;

/** How {@link Held} travels on the platform's dragboard: as an id in a format of our own. */
public final class HeldOnDragboard {
  private static final DataFormat FORMAT = new DataFormat("application/x-panwright-held");
  private static final String SHELF = "shelf ";
  private static final String WELL = "well ";

  private HeldOnDragboard() {}

  /** The content to put on the dragboard. */
  public static ClipboardContent content(Held held) {
    ClipboardContent content = new ClipboardContent();
    content.put(
        FORMAT,
        held instanceof Held.FromShelf fromShelf
            ? SHELF + fromShelf.paintId()
            : WELL + ((Held.FromWell) held).wellId());
    return content;
  }

  /** What a dragboard holds of ours. */
  public static Optional<Held> read(Dragboard board) {
    return board.getContent(FORMAT) instanceof String text ? parse(text) : Optional.empty();
  }

  private static Optional<Held> parse(String text) {
    if (text.startsWith(SHELF)) {
      return Optional.of(new Held.FromShelf(text.substring(SHELF.length())));
    }
    return text.startsWith(WELL)
        ? Optional.of(new Held.FromWell(text.substring(WELL.length())))
        : Optional.empty();
  }
}
