package org.panwright.app.subject;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import org.panwright.analysis.judge.Judgement;
import org.panwright.analysis.subject.PaintedPhoto;
import org.panwright.app.Session;
import org.panwright.app.fx.Latest;
import org.panwright.app.subject.PhotoSource.UnreadablePhotoException;
import org.panwright.colour.Clusters;

/**
 * Reads a photo, finds its colours, and paints it with the lineup looked at, all off the UI thread.
 */
final class PhotoBench {
  private static final double IDLE = -1;

  private final Session session;
  private final PhotoSource source;
  private final Executor home;
  private final Consumer<RuntimeException> failures;
  private final Latest<Read> reading;
  private final Latest<List<Clusters.Cluster>> clustering;
  private final Latest<int[]> painting;
  private final ReadOnlyObjectWrapper<Optional<Photo>> photo =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<int[]>> painted =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Optional<String>> problem =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper(IDLE);
  private final BooleanProperty showPainted = new SimpleBooleanProperty();
  private boolean isReading;
  private boolean isClustering;

  private record Read(Optional<Photo> photo, Optional<String> problem) {}

  /**
   * @param reader where photos are read and their colours found
   * @param painter where they are painted
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  PhotoBench(
      Session session,
      PhotoSource source,
      Executor reader,
      Executor painter,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.source = source;
    this.home = home;
    this.failures = failures;
    reading = new Latest<>(reader, home);
    clustering = new Latest<>(reader, home);
    painting = new Latest<>(painter, home);
    session.judgementProperty().addListener(o -> paint());
    showPainted.addListener(o -> paint());
  }

  ReadOnlyObjectProperty<Optional<Photo>> photoProperty() {
    return photo.getReadOnlyProperty();
  }

  Optional<Photo> photo() {
    return photo.get();
  }

  /** The name of the photo's file. */
  Optional<String> photoName() {
    return photo.get().map(Photo::name);
  }

  /** The photo as the lineup could paint it, while that is wanted. */
  ReadOnlyObjectProperty<Optional<int[]>> paintedProperty() {
    return painted.getReadOnlyProperty();
  }

  /** Why the last photo could not be read. */
  ReadOnlyObjectProperty<Optional<String>> problemProperty() {
    return problem.getReadOnlyProperty();
  }

  /** The share done of what is being worked on, 0..1; negative while there is nothing. */
  ReadOnlyDoubleProperty progressProperty() {
    return progress.getReadOnlyProperty();
  }

  /** Whether the photo is to be shown as the lineup could paint it. */
  BooleanProperty showPaintedProperty() {
    return showPainted;
  }

  /** Whether nothing is being worked out. */
  boolean isSettled() {
    return progress.get() < 0 && !isClustering;
  }

  /** Reads a photo; the one before stays until it is there. */
  void open(Path file, Runnable done) {
    progress.set(0);
    isReading = true;
    reading.request(
        outdated -> {
          try {
            return new Read(
                Optional.of(source.read(file, this::advance, outdated)), Optional.empty());
          } catch (UnreadablePhotoException unreadable) {
            return new Read(Optional.empty(), Optional.of(unreadable.getMessage()));
          }
        },
        read -> {
          isReading = false;
          progress.set(IDLE);
          problem.set(read.problem());
          read.photo()
              .ifPresent(
                  opened -> {
                    painted.set(Optional.empty());
                    photo.set(read.photo());
                    paint();
                    done.run();
                  });
        },
        this::fail);
  }

  /** Finds the colours that stand for a photo. */
  void cluster(Photo of, int most, Consumer<List<Clusters.Cluster>> found) {
    isClustering = true;
    clustering.request(
        outdated -> Clusters.of(of.sample(), most),
        clusters -> {
          isClustering = false;
          found.accept(clusters);
        },
        this::fail);
  }

  private void paint() {
    Optional<Judgement> judgement = session.judgementProperty().get();
    if (!showPainted.get() || photo.get().isEmpty() || judgement.isEmpty()) {
      painting.cancel();
      painted.set(Optional.empty());
      if (!isReading) {
        progress.set(IDLE);
      }
      return;
    }
    Photo original = photo.get().get();
    List<String> paints = judgement.get().earnings().stream().map(e -> e.paintId()).toList();
    progress.set(0);
    painting.request(
        outdated ->
            PaintedPhoto.with(
                    judgement.get().table(), paints, judgement.get().kit().washes(), outdated)
                .paint(original.rgb(), original.width(), this::advance, outdated),
        pixels -> {
          progress.set(IDLE);
          painted.set(Optional.of(pixels));
        },
        this::fail);
  }

  private void advance(double share) {
    home.execute(
        () -> {
          if (progress.get() >= 0) {
            progress.set(share);
          }
        });
  }

  private void fail(RuntimeException fault) {
    isReading = false;
    isClustering = false;
    progress.set(IDLE);
    failures.accept(fault);
  }
}
