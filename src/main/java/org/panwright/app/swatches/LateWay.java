package org.panwright.app.swatches;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.layout.Region;

/** A way of reading that is built when it is first chosen. */
public final class LateWay implements ReadingWay {
  private final WayWords words;
  private final Supplier<? extends ReadingWay> build;
  private Optional<ReadingWay> built = Optional.empty();

  /** What it says of itself is known before it is built. */
  public LateWay(WayWords words, Supplier<? extends ReadingWay> build) {
    this.words = words;
    this.build = build;
  }

  private ReadingWay way() {
    if (built.isEmpty()) {
      built = Optional.of(build.get());
    }
    return built.get();
  }

  @Override
  public WayWords words() {
    return words;
  }

  @Override
  public PictureMarks marks() {
    return way().marks();
  }

  @Override
  public Region content() {
    return way().content();
  }

  @Override
  public Region foot() {
    return way().foot();
  }

  @Override
  public void setChosen(boolean chosen) {
    if (chosen || built.isPresent()) {
      way().setChosen(chosen);
    }
  }
}
