package org.panwright.app.share;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.panwright.app.Session;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FileKind;
import org.panwright.app.dialogs.Form;
import org.panwright.app.files.KitDocument;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.table.TablePlan;
import org.panwright.paint.PigmentLibrary;
import org.panwright.swatch.table.DelimitedText;
import org.panwright.swatch.table.TableFaultException;
import org.panwright.words.ShareWords;

/** Takes tables of paints in: chooses a file, shows what it would do, and does it if wanted. */
final class TakingIn {
  private static final FileKind TABLE =
      new FileKind(ShareWords.OPEN_TITLE, ShareWords.TABLE_KIND, ".csv", List.of(".txt", ".tsv"));
  private static final long MOST_MEGABYTES = 16;

  private final Session session;
  private final KitDocument document;
  private final PigmentLibrary library;
  private final Dialogs dialogs;
  private final Executor away;
  private final Executor home;
  private final Consumer<RuntimeException> failures;

  /**
   * @param away where tables are read
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  TakingIn(
      Session session,
      KitDocument document,
      PigmentLibrary library,
      Dialogs dialogs,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.document = document;
    this.library = library;
    this.dialogs = dialogs;
    this.away = away;
    this.home = home;
    this.failures = failures;
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

  /** Reads and reckons away from the JavaFX thread: a table may have thousands of rows. */
  private void take(Path file, Optional<Lineup> lineup) {
    String name = file.getFileName().toString();
    Kit kit = session.kit();
    away.execute(
        () -> {
          try {
            ImportModel model =
                new ImportModel(read(file), kit, lineup, library, away, home, failures);
            home.execute(() -> offer(model, name));
          } catch (TableFaultException e) {
            refuse(ShareWords.unreadable(name, e.fault()));
          } catch (TooLargeException e) {
            refuse(ShareWords.tooLarge(name, MOST_MEGABYTES));
          } catch (IOException e) {
            refuse(ShareWords.noFile(name));
          } catch (RuntimeException fault) {
            home.execute(() -> failures.accept(fault));
          }
        });
  }

  private void offer(ImportModel model, String name) {
    ImportView view = new ImportView(model, name);
    dialogs
        .fillIn(
            new Form<>(
                ShareWords.importTitle(model.fillsLineup()),
                view,
                ShareWords.ACCEPT,
                model.acceptable(),
                model.planProperty()::get,
                view))
        .flatMap(TablePlan::edit)
        .ifPresent(session::perform);
  }

  private static DelimitedText read(Path file)
      throws IOException, TableFaultException, TooLargeException {
    if (Files.size(file) > MOST_MEGABYTES * 1024 * 1024) {
      throw new TooLargeException();
    }
    return DelimitedText.read(Files.readAllBytes(file));
  }

  private void refuse(String sentence) {
    home.execute(() -> dialogs.tell(ShareWords.CANNOT_READ, sentence));
  }

  private static final class TooLargeException extends Exception {
    private static final long serialVersionUID = 1;
  }
}
