package org.panwright.app.compare;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.app.fx.Latest;
import org.panwright.kit.FileProblem;
import org.panwright.print.ComparisonPage;
import org.panwright.print.PaperFormat;
import org.panwright.print.Papers;
import org.panwright.print.PdfWriter;
import org.panwright.store.FileProblemException;
import org.panwright.store.SafeFile;

/** The comparison shown as a sheet, made off the JavaFX thread while it is looked at. */
public final class ComparedPage {
  private final CompareModel model;
  private final Executor away;
  private final Executor home;
  private final Consumer<RuntimeException> failures;
  private final Latest<Papers> making;
  private final BooleanProperty looked = new SimpleBooleanProperty();
  private final ObjectProperty<PaperFormat> paper;
  private final ReadOnlyObjectWrapper<Optional<Papers>> papers =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private boolean settled = true;

  /**
   * @param usual what it is printed on until the painter says otherwise
   * @param away where it is made and written
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public ComparedPage(
      CompareModel model,
      PaperFormat usual,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.model = model;
    this.away = away;
    this.home = home;
    this.failures = failures;
    making = new Latest<>(away, home);
    paper = new SimpleObjectProperty<>(usual);
    model.comparedProperty().addListener(changed -> refresh());
    looked.addListener(changed -> refresh());
    paper.addListener(changed -> refresh());
  }

  /** Whether the sheet is looked at; while it is not, none is made. */
  BooleanProperty lookedProperty() {
    return looked;
  }

  /** What it is printed on. */
  ObjectProperty<PaperFormat> paperProperty() {
    return paper;
  }

  /** The newest whole sheet; empty while none is looked at. */
  ReadOnlyObjectProperty<Optional<Papers>> papersProperty() {
    return papers.getReadOnlyProperty();
  }

  /** Whether the sheet is that of the comparison shown, if one is looked at. */
  public boolean isSettled() {
    return settled;
  }

  /** Writes the sheet looked at as a PDF. */
  void save(Path file, Runnable done, Consumer<FileProblem> failed) {
    papers.get().ifPresent(sheet -> away.execute(() -> write(sheet, file, done, failed)));
  }

  private void write(Papers sheet, Path file, Runnable done, Consumer<FileProblem> failed) {
    try {
      new SafeFile().write(file, PdfWriter.write(sheet));
      home.execute(done);
    } catch (FileProblemException problem) {
      home.execute(() -> failed.accept(problem.problem()));
    } catch (RuntimeException fault) {
      home.execute(() -> failures.accept(fault));
    }
  }

  private void refresh() {
    Optional<Compared> compared = model.comparedProperty().get();
    if (!looked.get() || compared.isEmpty()) {
      making.cancel();
      settled = true;
      papers.set(Optional.empty());
      return;
    }
    Compared shown = compared.get();
    PaperFormat on = paper.get();
    settled = false;
    making.request(
        outdated ->
            ComparisonPage.of(
                shown.ofFirst(),
                shown.ofSecond(),
                shown.first().label(),
                shown.second().label(),
                shown.subjects(),
                on),
        made -> {
          settled = true;
          papers.set(Optional.of(made));
        },
        failures);
  }
}
