package org.panwright.app.swatches;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.panwright.app.fx.Latest;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.PictureFault;
import org.panwright.swatch.picture.PictureFaultException;
import org.panwright.swatch.picture.PictureFile;
import org.panwright.swatch.sheet.FoundSheet;
import org.panwright.swatch.sheet.SheetFinder;
import org.panwright.words.PictureWords;

/** The picture looked at, and the printed sheet found on it. */
public final class PictureModel {
  /** The progress when nothing is being read. */
  static final double IDLE = -1;

  private final Executor home;
  private final Consumer<RuntimeException> failures;
  private final Latest<Outcome> opening;
  private final ReadOnlyObjectWrapper<Optional<ShownPicture>> picture =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper(IDLE);
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
  private Optional<FoundSheet> found = Optional.empty();

  /** Either a picture, with the sheet on it if one was found, or why there is none. */
  private record Outcome(
      Optional<ShownPicture> picture, Optional<FoundSheet> sheet, Optional<PictureFault> fault) {}

  /**
   * @param away where pictures are read
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public PictureModel(Executor away, Executor home, Consumer<RuntimeException> failures) {
    this.home = home;
    this.failures = failures;
    opening = new Latest<>(away, home);
  }

  /** The picture; the former one stays while another is read, and when that fails. */
  public ReadOnlyObjectProperty<Optional<ShownPicture>> pictureProperty() {
    return picture.getReadOnlyProperty();
  }

  /** The name of its file; empty while there is none. */
  public String name() {
    return picture.get().map(ShownPicture::name).orElse("");
  }

  /** The sheet that was found on the picture by itself; empty if none was. Set before it. */
  Optional<FoundSheet> found() {
    return found;
  }

  /** The share of the file that is read, 0..1, or {@link #IDLE}. */
  ReadOnlyDoubleProperty progressProperty() {
    return progress.getReadOnlyProperty();
  }

  /** Why the last file could not be read, in a sentence; empty if it could. */
  ReadOnlyStringProperty problemProperty() {
    return problem.getReadOnlyProperty();
  }

  /** Reads another file. */
  public void open(Path file) {
    String name = file.getFileName().toString();
    problem.set("");
    progress.set(0);
    opening.request(
        stopped -> read(file, name, stopped),
        outcome -> take(name, outcome),
        fault -> {
          progress.set(IDLE);
          failures.accept(fault);
        });
  }

  /** Leaves off reading; what was shown stays. */
  void stop() {
    opening.cancel();
    progress.set(IDLE);
  }

  /** Whether nothing is being read. */
  public boolean isSettled() {
    return progress.get() == IDLE;
  }

  private Outcome read(Path file, String name, BooleanSupplier stopped) {
    try {
      Picture read = PictureFile.read(file, Latest.telling(stopped, home, progress::set), stopped);
      if (read.isGrey()) {
        throw new PictureFaultException(new PictureFault.Grey());
      }
      Optional<FoundSheet> sheet = SheetFinder.find(read);
      return new Outcome(
          Optional.of(ShownPicture.of(name, read, stopped)), sheet, Optional.empty());
    } catch (PictureFaultException unreadable) {
      return unreadable(unreadable.fault());
    } catch (OutOfMemoryError full) {
      return unreadable(new PictureFault.NoMemory());
    }
  }

  private static Outcome unreadable(PictureFault fault) {
    return new Outcome(Optional.empty(), Optional.empty(), Optional.of(fault));
  }

  private void take(String name, Outcome outcome) {
    progress.set(IDLE);
    outcome.fault().ifPresent(fault -> problem.set(PictureWords.sentence(name, fault) + stays()));
    if (outcome.picture().isPresent()) {
      found = outcome.sheet();
      picture.set(outcome.picture());
    }
  }

  private String stays() {
    return picture.get().map(shown -> " " + PictureWords.stays(shown.name())).orElse("");
  }
}
