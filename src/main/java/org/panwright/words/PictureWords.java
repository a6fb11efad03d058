package org.panwright.words;

import java.util.List;
import org.panwright.swatch.picture.PictureFault;
import org.panwright.swatch.sheet.HeldLightness;
import org.panwright.swatch.sheet.ReadingFault;
import org.panwright.swatch.sheet.ReadingNote;

/** What is said about pictures of swatches: why one cannot be read, and what makes it less sure. */
public final class PictureWords {
  private static final int MOST_PLACES = 6;

  private PictureWords() {}

  /** Why a file cannot be read as a picture, and what to do. */
  public static String sentence(String file, PictureFault fault) {
    if (fault instanceof PictureFault.NotAPicture) {
      return file + " is no picture. Choose a photo or scan saved as PNG or JPEG.";
    }
    if (fault instanceof PictureFault.OtherKind other) {
      return "%s is a %s file. Save the picture as PNG or JPEG and open that."
          .formatted(file, other.kind());
    }
    if (fault instanceof PictureFault.NoPixels none) {
      return "%s says it is %d by %d pixels, so there is nothing in it. Crop or save it again."
          .formatted(file, none.width(), none.height());
    }
    if (fault instanceof PictureFault.TooManyPixels many) {
      return "%s says it is %d by %d pixels; up to %d megapixels are read. Save it smaller: 300 dots to the inch are plenty."
          .formatted(file, many.width(), many.height(), many.mostMegapixels());
    }
    if (fault instanceof PictureFault.TooManyBytes many) {
      return "%s is %d MB long; up to %d MB are read. Save it smaller or as a JPEG."
          .formatted(file, many.megabytes(), many.most());
    }
    if (fault instanceof PictureFault.Cmyk) {
      return file
          + " holds printing inks (CMYK), not red, green and blue. Save it as RGB and open that.";
    }
    if (fault instanceof PictureFault.Grey) {
      return file
          + " is grey: it holds no colours to read. Scan or photograph the sheet in colour.";
    }
    if (fault instanceof PictureFault.Several) {
      return file + " holds several pictures or moves. Save the one to read by itself.";
    }
    if (fault instanceof PictureFault.RareJpeg rare) {
      return "%s is a rare kind of JPEG (%s). Save it as a usual JPEG or PNG and open that."
          .formatted(file, rare.kind());
    }
    if (fault instanceof PictureFault.TooManySteps steps) {
      return "%s is a progressive JPEG of %d by %d pixels, which takes %d MB of memory to open; up to %d MB are given. Save it as a baseline (not progressive) JPEG, or smaller."
          .formatted(file, steps.width(), steps.height(), steps.megabytes(), steps.most());
    }
    if (fault instanceof PictureFault.Broken) {
      return file + " is damaged or cut short. Copy or save it again.";
    }
    if (fault instanceof PictureFault.Unreadable) {
      return file + " cannot be opened. Check that it is still there and may be read.";
    }
    if (fault instanceof PictureFault.NoMemory) {
      return file + " is too large for the memory the program has. Save it smaller.";
    }
    throw new IllegalArgumentException("no words for " + fault);
  }

  /** After why a file cannot be read: which picture is still there. */
  public static String stays(String file) {
    return "What you see is still %s.".formatted(file);
  }

  /** Why nothing can be read off a picture, and what to do. */
  public static String sentence(ReadingFault fault) {
    if (fault instanceof ReadingFault.NoArea) {
      return "The four corners do not go round a sheet: they lie in one line or place, or their"
          + " sides cross. Drag each to its own corner, clockwise from the upper left.";
    }
    if (fault instanceof ReadingFault.OutsidePicture) {
      return "A corner lies outside the picture. Drag all four onto the sheet.";
    }
    if (fault instanceof ReadingFault.TooCoarse coarse) {
      return "The picture has %.1f pixels to a millimetre, too few to tell a patch from its edge. Take it larger or nearer."
          .formatted(coarse.pixelsPerMm());
    }
    if (fault instanceof ReadingFault.NoBarePaper) {
      return "No bare paper can be made out between the patches, so the light cannot be taken out."
          + " Check the corners, or take the picture again with bare paper round every"
          + " patch.";
    }
    if (fault instanceof ReadingFault.PaperTooColoured coloured) {
      return "What should be bare paper is strongly coloured (chroma %.0f): paint covers it, or the light is too coloured to be taken out. Check the corners, or take the picture again in daylight with bare paper round every patch."
          .formatted(coloured.chroma());
    }
    if (fault instanceof ReadingFault.NothingPainted) {
      return "All patches look like bare paper. Check the corners, or paint the sheet first.";
    }
    throw new IllegalArgumentException("no words for " + fault);
  }

  /** What makes a picture's colours less sure, with its figure, and what would help. */
  public static String sentence(ReadingNote note) {
    if (note instanceof ReadingNote.Overexposed over) {
      return "%.0f %% of the bare paper is cut off at white: expose less."
          .formatted(100 * over.share());
    }
    if (note instanceof ReadingNote.TooDark dark) {
      return "The paper is dark in the picture (%.0f of 255): expose more."
          .formatted(dark.lightness());
    }
    if (note instanceof ReadingNote.Noisy noisy) {
      return "The picture is noisy (%.0f %% at the paper): take it in more light."
          .formatted(noisy.percent());
    }
    if (note instanceof ReadingNote.ColouredLight light) {
      return "The light is coloured (the paper has a chroma of %.0f): the paper corrects it only in part; daylight is better."
          .formatted(light.chroma());
    }
    if (note instanceof ReadingNote.UnevenLight uneven) {
      return "The light falls off by a factor of %.1f across the sheet: light it evenly."
          .formatted(uneven.ratio());
    }
    if (note instanceof ReadingNote.SoiledPaper soiled) {
      return "%.0f %% of the places that should be bare are not, and were left out."
          .formatted(100 * soiled.share());
    }
    if (note instanceof ReadingNote.Coarse coarse) {
      return "Only %.1f pixels to a millimetre: a larger picture is surer."
          .formatted(coarse.pixelsPerMm());
    }
    if (note instanceof ReadingNote.Compressed compressed) {
      return "The JPEG is strongly compressed (quality %d of 100): save it at 85 or more."
          .formatted(compressed.quality());
    }
    if (note instanceof ReadingNote.Transparent transparent) {
      return "%.0f %% of the picture is transparent and was laid on white."
          .formatted(Math.max(1, 100 * transparent.share()));
    }
    if (note instanceof ReadingNote.CardUnused) {
      return "The card is not used: by it the paper would be too dark or too light for any paper."
          + " Move its mark onto the card, or type how much of the light it turns back.";
    }
    if (note instanceof ReadingNote.NoCode) {
      return "The squares at the sheet's head cannot be read: check the corners and name the paints"
          + " by hand.";
    }
    throw new IllegalArgumentException("no words for " + note);
  }

  /**
   * Patches whose lightness no coat can have, and what was done.
   *
   * @param places where they are, each in a word or two; at least one
   */
  public static String held(HeldLightness held, List<String> places) {
    String first = String.join("; ", places.subList(0, Math.min(MOST_PLACES, places.size())));
    int more = places.size() - MOST_PLACES;
    String all = more > 0 ? first + "; and %d more".formatted(more) : first;
    return switch (held) {
      case TOO_LIGHT ->
          "Lighter than the bare paper, and taken as white: %s. Look for glare or a scrap of other"
                  .formatted(all)
              + " paper there.";
      case TOO_DARK ->
          "Darker than black can be, and taken as the deepest black: %s. Expose more, or scan"
                  .formatted(all)
              + " without added contrast.";
      case NOT_HELD -> throw new IllegalArgumentException("nothing was held");
    };
  }
}
