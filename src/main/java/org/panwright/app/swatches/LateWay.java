package org.panwright.app.swatches;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.layout.Region;

/** A way of reading that is built when it is first chosen. */
public final class LateWay implements ReadingWay {
  private final String name;
  private final Supplier<? extends ReadingWay> build;
  private Optional<ReadingWay> built = Optional.empty();

  /**
   * @param name on its button
   */
  public LateWay(String name, Supplier<? extends ReadingWay> build) {
    this.name = name;
    this.build = build;
  }

  private ReadingWay way() {
    if (built.isEmpty()) {
      built = Optional.of(build.get());
    }
    return built.get();
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public String purpose() {
    return way().purpose();
  }

  @Override
  public String empty() {
    return way().empty();
  }

  @Override
  public String hint() {
    return way().hint();
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
