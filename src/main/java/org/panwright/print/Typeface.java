package org.panwright.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * A face of the papers with its real metrics: Liberation Sans (SIL Open Font License), which covers
 * Latin with its accents, Greek, Cyrillic and Hebrew.
 *
 * <p>Its widths are read once from the font file that is later embedded in the PDF, so a text
 * measured here is as long on paper.
 */
public enum Typeface {
  REGULAR("/liberation/LiberationSans-Regular.ttf"),
  BOLD("/liberation/LiberationSans-Bold.ttf");

  /** Millimetres in a point of 1/72 inch. */
  public static final double MM_PER_PT = 25.4 / 72;

  /** From one baseline to the next, as a multiple of the size. */
  public static final double LEADING = 1.17;

  private static final int BMP = 0x10000;
  private static final int ABSENT = -1;

  private final String resource;
  private final int[] advances = new int[BMP];
  private final double unitsPerEm;
  private final double ascent;
  private final double descent;

  Typeface(String resource) {
    this.resource = resource;
    try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(open()))) {
      unitsPerEm = font.getUnitsPerEm();
      ascent = font.getHorizontalHeader().getAscender() / unitsPerEm;
      descent = -font.getHorizontalHeader().getDescender() / unitsPerEm;
      CmapLookup glyphs = font.getUnicodeCmapLookup();
      for (int point = 0; point < BMP; point++) {
        int glyph = glyphs.getGlyphId(point);
        advances[point] = glyph == 0 ? ABSENT : font.getAdvanceWidth(glyph);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the font " + resource, e);
    }
  }

  /** Whether the face can draw a code point. */
  public boolean has(int codePoint) {
    return codePoint >= ' ' && codePoint < BMP && advances[codePoint] != ABSENT;
  }

  /**
   * The length of a line in millimetres, from the font's own advance widths.
   *
   * @throws IllegalArgumentException if the face lacks a character
   */
  public double widthMm(String text, double sizePt) {
    long units = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (!has(c)) {
        throw new IllegalArgumentException("the face has no glyph for U+%04X".formatted((int) c));
      }
      units += advances[c];
    }
    return units / unitsPerEm * sizePt * MM_PER_PT;
  }

  /** How far letters may rise above the baseline, accents included. */
  public double ascentMm(double sizePt) {
    return ascent * sizePt * MM_PER_PT;
  }

  /** How far letters may hang below the baseline. */
  public double descentMm(double sizePt) {
    return descent * sizePt * MM_PER_PT;
  }

  /** From one baseline to the next in millimetres. */
  public static double leadingMm(double sizePt) {
    return LEADING * sizePt * MM_PER_PT;
  }

  /** A fresh stream of the font file, for whoever shows a sheet in the same letters. */
  public final InputStream open() throws IOException {
    InputStream stream = Typeface.class.getResourceAsStream(resource);
    if (stream == null) {
      throw new IOException("the font " + resource + " is not on the class path");
    }
    return stream;
  }
}
