package org.panwright.print;

import java.util.Objects;

/**
 * What the painter chooses about pan labels.
 *
 * @param paper what they are printed on
 * @param places where on its pan a label goes
 */
public record LabelOptions(PaperFormat paper, Places places) implements PaperOrder {
  /** Where on its pan a label goes. */
  public enum Places {
    SIDE_AND_BASE,
    SIDE,
    BASE
  }

  /** For side and base, on A4. */
  public static final LabelOptions USUAL = new LabelOptions(PaperFormat.A4, Places.SIDE_AND_BASE);

  public LabelOptions {
    Objects.requireNonNull(paper, "paper");
    Objects.requireNonNull(places, "places");
  }

  @Override
  public PaperKind kind() {
    return PaperKind.PAN_LABELS;
  }

  @Override
  public LabelOptions withPaper(PaperFormat changed) {
    return new LabelOptions(changed, places);
  }

  /** The same for other places. */
  public LabelOptions withPlaces(Places changed) {
    return new LabelOptions(paper, changed);
  }

  @Override
  public Made make(Occasion occasion) {
    return PanLabels.of(occasion.kit(), occasion.lineupId(), this);
  }
}
