package org.panwright.app.share;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.panwright.app.Session;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FileKind;
import org.panwright.app.dialogs.Form;
import org.panwright.app.files.KitDocument;
import org.panwright.kit.Lineup;
import org.panwright.kit.table.TablePlan;
import org.panwright.paint.PigmentLibrary;
import org.panwright.swatch.DelimitedText;
import org.panwright.swatch.TableFaultException;
import org.panwright.words.ShareWords;

/** Takes tables of paints in: chooses a file, shows what it would do, and does it if wanted. */
final class TakingIn {
  private static final FileKind TABLE =
      new FileKind(ShareWords.OPEN_TITLE, ShareWords.TABLE_KIND, ".csv");
  private static final long MOST_MEGABYTES = 16;

  private final Session session;
  private final KitDocument document;
  private final PigmentLibrary library;
  private final Dialogs dialogs;

  TakingIn(Session session, KitDocument document, PigmentLibrary library, Dialogs dialogs) {
    this.session = session;
    this.document = document;
    this.library = library;
    this.dialogs = dialogs;
  }

  void ontoShelf() {
    choose().ifPresent(file -> take(file, Optional.empty()));
  }

  void intoLineup() {
    if (session.lineup().isPresent()) {
      choose().ifPresent(file -> take(file, session.lineup()));
    }
  }

  private Optional<Path> choose() {
    return dialogs.chooseToOpen(
        TABLE, document.file().map(own -> own.toAbsolutePath().getParent()));
  }

  private void take(Path file, Optional<Lineup> lineup) {
    String name = file.getFileName().toString();
    Optional<DelimitedText> table = read(file, name);
    if (table.isEmpty()) {
      return;
    }
    ImportModel model = new ImportModel(table.get(), session.kit(), lineup, library);
    ImportView view = new ImportView(model, name);
    dialogs
        .fillIn(
            new Form<>(
                ShareWords.importTitle(lineup.isPresent()),
                view,
                ShareWords.ACCEPT,
                model.planProperty().map(plan -> plan.edit().isPresent()),
                model.planProperty()::get,
                view))
        .flatMap(TablePlan::edit)
        .ifPresent(session::perform);
  }

  private Optional<DelimitedText> read(Path file, String name) {
    try {
      if (Files.size(file) > MOST_MEGABYTES * 1024 * 1024) {
        return refused(ShareWords.tooLarge(name, MOST_MEGABYTES));
      }
      return Optional.of(DelimitedText.read(Files.readAllBytes(file)));
    } catch (TableFaultException e) {
      return refused(ShareWords.unreadable(name, e.fault()));
    } catch (IOException e) {
      return refused(ShareWords.noFile(name));
    }
  }

  private Optional<DelimitedText> refused(String sentence) {
    dialogs.tell(ShareWords.CANNOT_READ, sentence);
    return Optional.empty();
  }
}
