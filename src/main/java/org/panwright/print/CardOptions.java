package org.panwright.print;

import java.util.Objects;
import java.util.Optional;

/**
 * What the painter chooses about a key card.
 *
 * @param format how large the card is
 * @param paper what it is printed on
 * @param fields what the swatches hold
 * @param list whether the list of wells is printed even if the card has room for everything
 * @param copies 1..50
 * @param turned whether the list is printed on the other side of the paper, behind its card
 */
public record CardOptions(
    CardFormat format, PaperFormat paper, Fields fields, boolean list, int copies, boolean turned)
    implements PaperOrder {
  /** What the swatches of a card hold. */
  public enum Fields {
    /** The predicted colour, masstone running into wash. */
    PREDICTED,
    /** Nothing: they are painted by hand. */
    TO_PAINT
  }

  /** One card for the lid on A4, with predicted colours. */
  public static final CardOptions USUAL =
      new CardOptions(CardFormat.LID, PaperFormat.A4, Fields.PREDICTED, false, 1, false);

  public CardOptions {
    Objects.requireNonNull(format, "format");
    Objects.requireNonNull(paper, "paper");
    Objects.requireNonNull(fields, "fields");
    if (copies < 1 || copies > 50) {
      throw new IllegalArgumentException("copies must lie in 1..50, were " + copies);
    }
  }

  @Override
  public PaperKind kind() {
    return PaperKind.KEY_CARD;
  }

  @Override
  public Made make(Occasion occasion) {
    KeyCard card =
        KeyCard.of(occasion.kit(), occasion.lineupId(), occasion.library(), this, occasion.date());
    return new Made(Optional.of(card.papers()), card.notes());
  }

  /** The same with another size of card. */
  public CardOptions withFormat(CardFormat changed) {
    return new CardOptions(changed, paper, fields, list, copies, turned);
  }

  @Override
  public CardOptions withPaper(PaperFormat changed) {
    return new CardOptions(format, changed, fields, list, copies, turned);
  }

  /** The same with predicted or empty fields. */
  public CardOptions withFields(Fields changed) {
    return new CardOptions(format, paper, changed, list, copies, turned);
  }

  /** The same with or without the list. */
  public CardOptions withList(boolean changed) {
    return new CardOptions(format, paper, fields, changed, copies, turned);
  }

  /** The same in another number. */
  public CardOptions withCopies(int changed) {
    return new CardOptions(format, paper, fields, list, changed, turned);
  }

  /** The same with the list beside the card or behind it. */
  public CardOptions withTurned(boolean changed) {
    return new CardOptions(format, paper, fields, list, copies, changed);
  }
}
