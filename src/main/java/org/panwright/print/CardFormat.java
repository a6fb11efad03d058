package org.panwright.print;

import org.panwright.kit.Box;

/** How large a key card is. */
public enum CardFormat {
  /** To go inside the box's lid, with {@link #PLAY_MM} to spare. */
  LID(0, 0),
  A6(148, 105),
  A5(210, 148),
  A4(297, 210);

  /** How much smaller than the lid a card is, so that it goes in and comes out again. */
  public static final double PLAY_MM = 1;

  private final double longMm;
  private final double shortMm;

  CardFormat(double longMm, double shortMm) {
    this.longMm = longMm;
    this.shortMm = shortMm;
  }

  /** The area of the card for a box; paper sizes lie the way the box does. */
  Area area(Box box) {
    if (this == LID) {
      return new Area(0, 0, box.lidWidthMm() - PLAY_MM, box.lidHeightMm() - PLAY_MM);
    }
    return box.widthMm() >= box.heightMm()
        ? new Area(0, 0, longMm, shortMm)
        : new Area(0, 0, shortMm, longMm);
  }
}
