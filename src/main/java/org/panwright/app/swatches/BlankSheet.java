package org.panwright.app.swatches;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.panwright.app.Session;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;
import org.panwright.paint.Paint;
import org.panwright.print.Papers;
import org.panwright.print.PdfWriter;
import org.panwright.print.SwatchSheet;
import org.panwright.store.FileProblemException;
import org.panwright.store.SafeFile;
import org.panwright.swatch.sheet.SheetFormat;

/** The sheet to paint on, for the paints of the kit. */
public final class BlankSheet {
  private final Session session;
  private final Executor away;
  private final Executor home;
  private final Consumer<RuntimeException> failures;

  /**
   * @param away where the sheet is laid out and written
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public BlankSheet(
      Session session, Executor away, Executor home, Consumer<RuntimeException> failures) {
    this.session = session;
    this.away = away;
    this.home = home;
    this.failures = failures;
  }

  /**
   * The sheet.
   *
   * @param lineupOnly whether it holds only the lineup looked at, its white and its black
   */
  Papers papers(boolean lineupOnly, SheetFormat format) {
    Kit kit = session.kit();
    return SwatchSheet.of(kit.name(), SwatchSheet.rows(kit.shelf(), wanted(lineupOnly)), format);
  }

  /** How many of these paints are only wished for and so not on the sheet. */
  int wished(boolean lineupOnly) {
    return SwatchSheet.wished(wanted(lineupOnly));
  }

  /** Writes it as a PDF. */
  void save(Papers papers, Path file, Runnable done, Consumer<FileProblem> failed) {
    away.execute(
        () -> {
          try {
            new SafeFile().write(file, PdfWriter.write(papers));
            home.execute(done);
          } catch (FileProblemException problem) {
            home.execute(() -> failed.accept(problem.problem()));
          } catch (RuntimeException fault) {
            home.execute(() -> failures.accept(fault));
          }
        });
  }

  private List<Paint> wanted(boolean lineupOnly) {
    Kit kit = session.kit();
    return lineupOnly && session.lineup().isPresent()
        ? session.lineup().get().fillings().values().stream()
            .flatMap(filling -> kit.shelf().find(filling.paintId()).stream())
            .toList()
        : kit.shelf().paints();
  }
}
