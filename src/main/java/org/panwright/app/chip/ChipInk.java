package org.panwright.app.chip;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.CornerRadii;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Stop;
import org.panwright.colour.Srgb;

/**
 * Masstone running into wash as the background of a region: drawn by the toolkit at the screen's
 * own scale, made once for each paint. For the JavaFX thread.
 */
public final class ChipInk {
  /** The share of a chip's length that shows plain masstone before it thins out. */
  private static final double PLAIN = 0.22;

  private static final int LARGEST = 20_000;

  private final Orientation run;
  private final CornerRadii radii;
  private final Map<Tones, Background> inks = new HashMap<>();

  /**
   * @param run the way the colour thins out: to the right or downwards
   * @param radiusPx of the corners
   */
  public ChipInk(Orientation run, double radiusPx) {
    this.run = run;
    radii = new CornerRadii(radiusPx);
  }

  /** The background that shows these tones. */
  public Background of(Tones tones) {
    if (inks.size() >= LARGEST) {
      inks.clear();
    }
    return inks.computeIfAbsent(tones, this::mix);
  }

  private Background mix(Tones tones) {
    boolean across = run == Orientation.HORIZONTAL;
    LinearGradient gradient =
        new LinearGradient(
            0, 0, across ? 1 : 0, across ? 0 : 1, true, CycleMethod.NO_CYCLE, stops(tones));
    return new Background(new BackgroundFill(gradient, radii, Insets.EMPTY));
  }

  private static List<Stop> stops(Tones tones) {
    List<Stop> stops = new ArrayList<>();
    int last = tones.washes().size() - 1;
    for (int i = 0; i <= last; i++) {
      Srgb shown = tones.washes().get(i).shown();
      stops.add(new Stop(PLAIN + (1 - PLAIN) * i / last, color(shown)));
    }
    return stops;
  }

  private static Color color(Srgb shown) {
    return Color.color(shown.red(), shown.green(), shown.blue());
  }
}
