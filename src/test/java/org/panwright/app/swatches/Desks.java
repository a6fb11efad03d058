package org.panwright.app.swatches;

import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Executor;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.dialogs.ScriptedDialogs;
import org.panwright.app.theme.Theme;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.Shelf;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.swatch.sheet.InventedShelf;

/** Models that do everything at once, on a kit of the invented paints. */
final class Desks {
  static final LocalDate DAY = LocalDate.of(2026, 11, 25);
  static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();

  final Session session;
  final PictureModel pictures =
      new PictureModel(Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail);
  final SheetModel sheet;

  Desks(Kit kit) {
    this(kit, Sessions.AT_ONCE);
  }

  /**
   * @param learner where the paints are fitted
   */
  Desks(Kit kit, Executor learner) {
    session = Sessions.on(kit);
    sheet =
        new SheetModel(
            session,
            pictures,
            LIBRARY,
            new Learning(session, LIBRARY, () -> DAY, learner, Sessions.AT_ONCE, Sessions::fail),
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions::fail);
  }

  /** A window with the view of swatches, ready for a printed sheet. */
  SwatchesView showSheets(Stage stage) {
    BlankSheet blank = new BlankSheet(session, Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail);
    ScriptedDialogs dialogs = new ScriptedDialogs();
    SwatchesView view =
        new SwatchesView(
            pictures, List.of(new SheetSide(sheet, blank, dialogs)), dialogs, Runnable::run);
    Scene scene = new Scene(view, 1240, 760);
    scene.getStylesheets().setAll(Theme.LIGHT.sheets());
    stage.setScene(scene);
    stage.show();
    return view;
  }

  static Kit kit() {
    return Kit.empty("invented paints").withShelf(new Shelf(InventedShelf.paints()));
  }
}
