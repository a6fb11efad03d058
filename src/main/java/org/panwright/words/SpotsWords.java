package org.panwright.words;

import org.panwright.colour.Lab;
import org.panwright.swatch.spot.SpotKind;

/** What is said where single spots are read off a picture. */
public final class SpotsWords {
  /** Name of the way of reading. */
  public static final String NAME = "Spots";

  /** What it is for. */
  public static final String PURPOSE =
      "Any picture of swatches: point at the bare paper, then at each swatch and say what it is.";

  /** In place of the picture. */
  public static final String EMPTY =
      "Open a photo or scan of swatches painted anywhere, with some bare paper beside them.";

  /** How spots are placed. */
  public static final String HINT =
      "A click places the next spot; drag one to move it. By keys: Insert places a spot in the"
          + " middle, Page Up and Page Down pick one, arrows move it (with Shift by ten), Delete"
          + " takes it away, + and − zoom, 0 shows all.";

  /** Heading. */
  public static final String NEXT = "The next spot";

  /** Field. */
  public static final String KIND = "What it is of";

  /** Field. */
  public static final String PAINT = "Paint";

  /** Field. */
  public static final String SIZE = "Size";

  /** Beside the field of the card. */
  public static final String OF_LIGHT = "% of light";

  /** Field. */
  public static final String CARD = "Card";

  /** The field for readers of the screen. */
  public static final String CARD_PERCENT = "Light the card turns back, in per cent";

  /** What is wrong with it. */
  public static final String CARD_WRONG =
      "Type how much of the light the card turns back, 2 to 98 per cent.";

  /** A usual card. */
  public static final String GREY = "grey";

  /** A usual card. */
  public static final String WHITE = "white";

  /** In place of a paint. */
  public static final String NO_PAINT = "no paint yet";

  /** Takes a spot away. */
  public static final String REMOVE = "Remove";

  /** In place of a colour. */
  public static final String NOT_READ = "not read";

  /** Before anything can be read. */
  public static final String NEEDS_PAPER =
      "Place a spot on bare paper too, or on a grey or white card: without it the light of the"
          + " picture is unknown.";

  /** The spots of paper are no paper. */
  public static final String NO_PAPER =
      "The spots of bare paper do not look like one paper: some are dark or of other colours. Move"
          + " them onto clean paper.";

  private SpotsWords() {}

  /** What a spot is of. */
  public static String kind(SpotKind kind) {
    return switch (kind) {
      case PAPER -> "bare paper";
      case CARD -> "grey or white card";
      case FULL -> "full strength";
      case WASH -> "wash";
      case WITH_WHITE -> "1:1 with white";
      case WITH_BLACK -> "1:1 with black";
      case OVER_LINE -> "over a black line";
      case BARE_LINE -> "the bare black line";
    };
  }

  /** A spot by its number. */
  public static String spot(int number) {
    return "Spot " + number;
  }

  /** Takes a spot away, by its number. */
  public static String remove(int number) {
    return "Remove spot " + number;
  }

  /** The colour read, and how uneven the spot is. */
  public static String figures(Lab read, double spread) {
    return "L* %d  a* %d  b* %d%nuneven by %.1f"
        .formatted(Math.round(read.l()), Math.round(read.a()), Math.round(read.b()), spread);
  }
}
