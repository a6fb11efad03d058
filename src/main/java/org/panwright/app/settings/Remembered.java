package org.panwright.app.settings;

import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.panwright.store.FileProblemException;
import org.panwright.store.Settings;
import org.panwright.store.SettingsFile;

/**
 * The settings now. Every change is written a moment later, changes in between together; what is
 * left is written by {@link #writeNow}. For the JavaFX thread.
 */
public final class Remembered {
  private static final long DELAY_MS = 800;

  private final SettingsFile file;
  private final ScheduledExecutorService clock;
  private final Consumer<String> log;
  private final ReadOnlyObjectWrapper<Settings> settings;
  private ScheduledFuture<?> planned;
  private Settings written;

  /**
   * @param log told when the settings cannot be written, which is not worth a question
   */
  public Remembered(SettingsFile file, ScheduledExecutorService clock, Consumer<String> log) {
    this.file = file;
    this.clock = clock;
    this.log = log;
    written = file.read();
    settings = new ReadOnlyObjectWrapper<>(written);
  }

  /** The settings now. */
  public ReadOnlyObjectProperty<Settings> settingsProperty() {
    return settings.getReadOnlyProperty();
  }

  /** The settings now; see {@link #settingsProperty}. */
  public Settings settings() {
    return settings.get();
  }

  /** Changes the settings. */
  public void change(UnaryOperator<Settings> change) {
    Settings changed = change.apply(settings());
    if (changed.equals(settings())) {
      return;
    }
    settings.set(changed);
    if (planned != null) {
      planned.cancel(false);
    }
    planned = clock.schedule(() -> write(changed), DELAY_MS, TimeUnit.MILLISECONDS);
  }

  /** Writes what is not written yet. */
  public void writeNow() {
    if (planned != null) {
      planned.cancel(false);
      planned = null;
    }
    write(settings());
  }

  private synchronized void write(Settings now) {
    if (now.equals(written)) {
      return;
    }
    try {
      file.write(now);
      written = now;
    } catch (FileProblemException unwritable) {
      log.accept("settings not written: " + unwritable.getMessage());
    }
  }
}
