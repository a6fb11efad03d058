package org.panwright.swatch.sheet;

/** Something about a picture that makes its colours less sure, with its figure; no sentence. */
public sealed interface ReadingNote {
  /** Bare paper as light as the picture can hold: its colours are cut off. {@code share} 0..1. */
  record Overexposed(double share) implements ReadingNote {}

  /** The paper is dark: {@code lightness} is the encoded mean, 0..255. */
  record TooDark(double lightness) implements ReadingNote {}

  /** Pixels differ much from their neighbours: deviation in per cent of the paper's lightness. */
  record Noisy(double percent) implements ReadingNote {}

  /** The light is coloured: chroma C*ab of the paper in the picture. */
  record ColouredLight(double chroma) implements ReadingNote {}

  /** The light falls off: brightest over darkest paper. */
  record UnevenLight(double ratio) implements ReadingNote {}

  /** Some bare spots are not bare: the share that was left out. */
  record SoiledPaper(double share) implements ReadingNote {}

  /** Few pixels: how many to a millimetre. */
  record Coarse(double pixelsPerMm) implements ReadingNote {}

  /** A JPEG of low quality, 1..100. */
  record Compressed(int quality) implements ReadingNote {}

  /** Part of the picture was transparent and is taken as white. */
  record Transparent(double share) implements ReadingNote {}

  /** The card cannot be what it is said to be, so the paper's colour is taken from the kit. */
  record CardUnused() implements ReadingNote {}

  /** The sheet's page code cannot be read. */
  record NoCode() implements ReadingNote {}
}
