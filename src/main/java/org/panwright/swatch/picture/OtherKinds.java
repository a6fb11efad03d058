package org.panwright.swatch.picture;

import java.nio.charset.StandardCharsets;

/** Kinds of picture files that are recognised in order to be refused by name. */
final class OtherKinds {
  private OtherKinds() {}

  static PictureFault of(byte[] start) {
    String text = new String(start, StandardCharsets.ISO_8859_1);
    if (text.startsWith("GIF8")) {
      return new PictureFault.OtherKind("GIF");
    }
    if (text.startsWith("BM")) {
      return new PictureFault.OtherKind("BMP");
    }
    if (text.startsWith("II*\0") || text.startsWith("MM\0*")) {
      return new PictureFault.OtherKind("TIFF");
    }
    if (text.startsWith("RIFF") && text.startsWith("WEBP", 8)) {
      return new PictureFault.OtherKind("WebP");
    }
    if (text.startsWith("ftyp", 4)) {
      return new PictureFault.OtherKind(text.startsWith("avif", 8) ? "AVIF" : "HEIF");
    }
    if (text.startsWith("%PDF")) {
      return new PictureFault.OtherKind("PDF");
    }
    return new PictureFault.NotAPicture();
  }
}
