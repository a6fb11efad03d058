package org.panwright.swatch.sheet;

/** Why nothing can be read off a picture: facts for a sentence, no sentence. */
public sealed interface ReadingFault {
  /** The four corners do not go round an area. */
  record NoArea() implements ReadingFault {}

  /** The corners lie, wholly or in part, outside the picture. */
  record OutsidePicture() implements ReadingFault {}

  /** Too few pixels to tell a patch from its edge: how many to a millimetre. */
  record TooCoarse(double pixelsPerMm) implements ReadingFault {}

  /** Too few of the bare spots agree on any colour that could be paper. */
  record NoBarePaper() implements ReadingFault {}

  /** What should be bare paper is far more coloured than a lamp makes it: its chroma C*ab. */
  record PaperTooColoured(double chroma) implements ReadingFault {}

  /** No patch differs from the paper. */
  record NothingPainted() implements ReadingFault {}
}
