package org.panwright.swatch.sheet;

import java.util.ArrayList;
import java.util.List;
import org.panwright.colour.Light;
import org.panwright.colour.LinearSrgb;
import org.panwright.colour.Srgb;
import org.panwright.colour.Xyz;
import org.panwright.swatch.picture.Picture;

/** What is to be said about a picture by its bare paper; the limits stand in docs/numbers.md. */
final class SurveyNotes {
  private static final double MOST_FULL = 0.02;
  private static final double LEAST_LIGHTNESS = 100;
  private static final double MOST_GRAIN = 6;
  private static final double MOST_CHROMA = 12;
  private static final double MOST_FALL = 1.6;
  private static final double LEAST_USED = 0.8;
  private static final double LEAST_PIXELS = 4;
  private static final int LEAST_QUALITY = 60;

  private SurveyNotes() {}

  /**
   * How coloured the paper is in the picture, as C*ab at a luminance of 0.8. Uncorrected light of
   * CIE illuminant A (x 0.4476, y 0.4075) makes white paper 62.
   */
  static double chroma(List<SpotColour> bare, PaperField field) {
    Xyz mean = mean(bare, field);
    return mean.times(0.8 / mean.y()).toLab(Light.D65.white()).chroma();
  }

  private static Xyz mean(List<SpotColour> bare, PaperField field) {
    LinearSrgb sum = new LinearSrgb(0, 0, 0);
    for (SpotColour spot : bare) {
      LinearSrgb paper = field.at(spot.middle());
      sum =
          new LinearSrgb(
              sum.red() + paper.red(), sum.green() + paper.green(), sum.blue() + paper.blue());
    }
    return sum.toXyzD65().times(1.0 / bare.size());
  }

  static List<ReadingNote> of(
      Picture picture, List<SpotColour> bare, PaperField field, double pixelsPerMm) {
    List<ReadingNote> notes = new ArrayList<>();
    double full = bare.stream().mapToDouble(SpotColour::full).average().orElse(0);
    if (full > MOST_FULL) {
      notes.add(new ReadingNote.Overexposed(full));
    }
    double brightest = 0;
    double darkest = Double.POSITIVE_INFINITY;
    double grain = 0;
    for (SpotColour spot : bare) {
      LinearSrgb paper = field.at(spot.middle());
      double y = paper.toXyzD65().y();
      brightest = Math.max(brightest, y);
      darkest = Math.min(darkest, y);
      grain += 100 * spot.grain() / bare.size();
    }
    double light = mean(bare, field).y();
    double lightness = 255 * Srgb.encode(Math.max(0, Math.min(1, light)));
    if (lightness < LEAST_LIGHTNESS) {
      notes.add(new ReadingNote.TooDark(lightness));
    }
    if (grain > MOST_GRAIN) {
      notes.add(new ReadingNote.Noisy(grain));
    }
    double chroma = chroma(bare, field);
    if (chroma > MOST_CHROMA) {
      notes.add(new ReadingNote.ColouredLight(chroma));
    }
    if (brightest / darkest > MOST_FALL) {
      notes.add(new ReadingNote.UnevenLight(brightest / darkest));
    }
    if (field.used() < LEAST_USED) {
      notes.add(new ReadingNote.SoiledPaper(1 - field.used()));
    }
    if (pixelsPerMm < LEAST_PIXELS) {
      notes.add(new ReadingNote.Coarse(pixelsPerMm));
    }
    if (picture.quality() < LEAST_QUALITY) {
      notes.add(new ReadingNote.Compressed(picture.quality()));
    }
    if (picture.transparent() > 0) {
      notes.add(new ReadingNote.Transparent(picture.transparent()));
    }
    return notes;
  }
}
