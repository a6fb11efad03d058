package org.panwright.swatch.picture;

/** Why a file cannot be read as a picture of swatches: facts for a sentence, no sentence. */
public sealed interface PictureFault {
  /** The file does not begin like a PNG or JPEG. */
  record NotAPicture() implements PictureFault {}

  /** The file is of another known kind. */
  record OtherKind(String kind) implements PictureFault {}

  /** The file says that the picture has no pixels. */
  record NoPixels(long width, long height) implements PictureFault {}

  /** The file says that the picture is larger than any that is read. */
  record TooManyPixels(long width, long height, int mostMegapixels) implements PictureFault {}

  /** The file itself is longer than any that is read. */
  record TooManyBytes(long megabytes, long most) implements PictureFault {}

  /** Four inks instead of red, green and blue. */
  record Cmyk() implements PictureFault {}

  /** Without colours. */
  record Grey() implements PictureFault {}

  /** Moving, or several pictures one after the other. */
  record Several() implements PictureFault {}

  /** A rare kind of JPEG. */
  record RareJpeg(String kind) implements PictureFault {}

  /** A progressive JPEG whose steps have to be kept in more memory than it is given. */
  record TooManySteps(int width, int height, long megabytes, int most) implements PictureFault {}

  /** The file ends too early or contradicts itself. */
  record Broken() implements PictureFault {}

  /** The file cannot be opened. */
  record Unreadable() implements PictureFault {}

  /** The memory does not suffice. */
  record NoMemory() implements PictureFault {}
}
