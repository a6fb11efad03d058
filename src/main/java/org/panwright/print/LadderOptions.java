package org.panwright.print;

import java.util.Objects;
import org.panwright.words.PaperWords;

/**
 * What the painter chooses about a swatch ladder.
 *
 * @param paper what it is printed on
 */
public record LadderOptions(PaperFormat paper) implements PaperOrder {
  /** On A4. */
  public static final LadderOptions USUAL = new LadderOptions(PaperFormat.A4);

  public LadderOptions {
    Objects.requireNonNull(paper, "paper");
  }

  @Override
  public PaperKind kind() {
    return PaperKind.SWATCH_LADDER;
  }

  @Override
  public LadderOptions withPaper(PaperFormat changed) {
    return new LadderOptions(changed);
  }

  @Override
  public Made make(Occasion occasion) {
    return occasion.paints().isEmpty()
        ? Made.nothing(PaperWords.NO_PAINTS)
        : Made.of(SwatchLadder.of(occasion.kit(), occasion.lineupId(), paper));
  }
}
