package org.panwright.app.share;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Menu;
import org.panwright.app.Session;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.files.KitDocument;
import org.panwright.app.fx.Action;
import org.panwright.app.window.Menus;
import org.panwright.words.ShareWords;

/** The menu of what is passed on and taken in. */
public final class ShareActions {
  private final Session session;
  private final Sharing sharing;
  private final TakingIn takingIn;

  /**
   * @param away where files are written
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   * @param figures what pictures are taken of, once it is shown
   */
  public ShareActions(
      Session session,
      KitDocument document,
      ToneBook tones,
      Dialogs dialogs,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures,
      Supplier<Optional<Figures>> figures) {
    this.session = session;
    sharing =
        new Sharing(
            session, document, tones, dialogs, new FileSaver(away, home, failures), figures);
    takingIn = new TakingIn(session, document, tones.library(), dialogs, away, home, failures);
  }

  /** The menu. */
  public Menu menu() {
    ObservableValue<Boolean> some = session.lineupProperty().map(Optional::isPresent);
    return Menus.of(
        ShareWords.MENU,
        List.of(
            List.of(Action.of(ShareWords.COPY, sharing::copy).on("Shortcut+Shift+K")),
            List.of(
                Action.of(ShareWords.SHELF_IN, takingIn::ontoShelf).on("Shortcut+I"),
                Action.of(ShareWords.SHELF_OUT, sharing::shelf).on("Shortcut+Shift+I"),
                Action.of(ShareWords.LINEUP_IN, takingIn::intoLineup).when(some),
                Action.of(ShareWords.LINEUP_OUT, sharing::lineup).when(some)),
            List.of(
                Action.of(ShareWords.CSS_OUT, sharing::styleSheet).when(some),
                Action.of(ShareWords.PALETTE_OUT, sharing::palette).when(some)),
            List.of(
                Action.of(ShareWords.GRID_OUT, sharing::gridPicture).when(some),
                Action.of(ShareWords.RING_OUT, sharing::ringPicture).when(some),
                Action.of(ShareWords.BOX_OUT, sharing::boxPicture).when(some))));
  }
}
