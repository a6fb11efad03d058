package org.panwright.app.swatches;

import java.time.LocalDate;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
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
    session = Sessions.on(kit);
    sheet =
        new SheetModel(
            session,
            pictures,
            LIBRARY,
            learning(),
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions::fail);
  }

  private Learning learning() {
    return new Learning(
        session, LIBRARY, () -> DAY, Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail);
  }

  static Kit kit() {
    return Kit.empty("invented paints").withShelf(new Shelf(InventedShelf.paints()));
  }
}
