package org.panwright.words;

import org.panwright.analysis.subject.Match;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.kit.Kit;
import org.panwright.kit.SubjectColour;
import org.panwright.mixing.Trust;
import org.panwright.swatch.picture.PictureFault;

/** What the view of a subject says. */
public final class SubjectWords {
  public static final String PLACE = "Subject";
  public static final String OPEN = "Open a photo…";
  public static final String OPEN_TITLE = "Open a photo of the place";
  public static final String PHOTOS = "Photos (PNG, JPEG)";
  public static final String COLOURS = "Colours";
  public static final String HOW_MANY = "How many colours to take from the photo";
  public static final String TAKE = "Take its colours";
  public static final String PAINTED = "As this lineup paints it";
  public static final String PAINTED_HELP =
      "Left of the line the photo, right of it every colour as the nearest one this lineup mixes;"
          + " drag the line, or move it with Shift and the arrow keys";
  public static final String NO_PHOTO =
      "Open a photo of the place, or drop one here, to see its colours and how to mix them. The"
          + " photo stays where it is; the kit keeps only the colours and the name of the file.";
  public static final String NO_COLOURS =
      "No colours yet. Open a photo, click in it and keep the colour, or type one.";
  public static final String OUTING = "Outing";
  public static final String ADD = "Add";
  public static final String KEEP = "Keep this colour";
  public static final String REMOVE = "Remove";
  public static final String REPLACE = "Take picked colour";
  public static final String WAYS = "Other ways";
  public static final String NAME = "Name of the colour";
  public static final String EMPTY_BOX = "No paint in this box.";
  public static final String PHOTO =
      "Photo of the place; click to pick a colour, or go there with the arrow keys and press Enter";
  public static final String PHOTO_KEYS =
      "Click a place, or go there with the arrow keys and press Enter, to pick its colour.";

  private SubjectWords() {}

  /** A name for a colour nobody has named yet. */
  public static String name(Lab lab) {
    String described = ColourWords.describe(Oklab.ofD65(lab.toXyz(Light.D65.white())).toOklch());
    return described.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + described.substring(1);
  }

  /** Where a colour was picked. */
  public static String pickedIn(String photo) {
    return "Picked in " + WordParts.shortened(photo);
  }

  /** The name of an outing made for the colours of a photo. */
  public static String outing(String photo) {
    return photo.isEmpty() ? "Subject" : "Subject of " + WordParts.shortened(photo);
  }

  /** The share of the photo a colour stands for, or where it is from. */
  public static String share(SubjectColour colour) {
    return colour.share() > 0 ? "%.0f %% of the photo".formatted(100 * colour.share()) : "";
  }

  /** The nearest mix of the box. */
  public static String fromBox(Match match, Trust trust, Kit kit) {
    return RecipeWords.match(match, kit) + ": " + RecipeWords.nearness(match, trust);
  }

  /** The nearer mix of the shelf. */
  public static String fromShelf(Match match, Trust trust, Kit kit) {
    return "From the shelf: %s %s"
        .formatted(RecipeWords.match(match, kit), RecipeWords.difference(match, trust));
  }

  /** Why a file cannot be read as a photo, and what to do. */
  public static String unreadable(String file, PictureFault fault) {
    String name = WordParts.shortened(file);
    return fault instanceof PictureFault.Grey
        ? name + " is grey: it holds no colours to mix. Choose a photo in colour."
        : PictureWords.sentence(name, fault);
  }
}
