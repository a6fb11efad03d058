package org.panwright.app.swatches;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.panwright.swatch.sheet.HeldLightness;
import org.panwright.swatch.sheet.PatchReading;
import org.panwright.words.PictureWords;

/** Gathers the patches whose lightness was held, to say so in one sentence of each kind. */
public final class HeldRemarks {
  private final Map<HeldLightness, List<String>> places = new EnumMap<>(HeldLightness.class);

  /** Looks at a patch, at a place of this name. */
  public void add(String place, PatchReading patch) {
    if (patch.held() != HeldLightness.NOT_HELD) {
      places.computeIfAbsent(patch.held(), unused -> new ArrayList<>()).add(place);
    }
  }

  /** The sentences; none if nothing was held. */
  public List<String> sentences() {
    return places.entrySet().stream()
        .map(entry -> PictureWords.held(entry.getKey(), entry.getValue()))
        .toList();
  }
}
