package org.panwright.app.box;

import java.util.Optional;
import org.panwright.app.chip.Tones;
import org.panwright.kit.Fill;
import org.panwright.kit.Well;
import org.panwright.paint.Paint;
import org.panwright.words.BoxWords;
import org.panwright.words.ColourWords;

/**
 * One well as it is shown.
 *
 * @param well the place
 * @param content what is in it, if anything
 */
public record WellPicture(Well well, Optional<Content> content) {
  /** A paint in a well, how far it fills it, and how it looks. */
  public record Content(Paint paint, Fill fill, Tones tones) {}

  /** All there is to say, for those who cannot see it. */
  public String spoken() {
    return content
        .map(
            c ->
                BoxWords.spokenFull(
                    well, c.paint(), ColourWords.describe(c.tones().body()), c.fill()))
        .orElseGet(() -> BoxWords.spokenEmpty(well));
  }

  /** The lines of the tooltip. */
  public String explained() {
    return content
        .map(
            c ->
                BoxWords.explainedFull(
                    well,
                    c.paint(),
                    ColourWords.describe(c.tones().masstone()),
                    ColourWords.describe(c.tones().body()),
                    c.fill(),
                    c.tones().source(),
                    c.tones().expectedError()))
        .orElseGet(() -> BoxWords.explainedEmpty(well));
  }
}
