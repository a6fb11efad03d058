package org.panwright.kit;

import java.util.Objects;
import org.panwright.colour.Lab;

/**
 * A colour of the place the painter wants to meet.
 *
 * @param name not blank
 * @param lab CIELAB under D65
 * @param share of the photo it stands for, 0..1; 0 where it was typed or picked by hand
 * @param photo the name of the file it was taken from, without its folder; may be empty
 */
public record SubjectColour(String name, Lab lab, double share, String photo) {
  public SubjectColour {
    Objects.requireNonNull(lab, "lab");
    Objects.requireNonNull(photo, "photo");
    if (name.isBlank()) {
      throw new IllegalArgumentException("a subject colour needs a name");
    }
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("a share must lie in 0..1, was " + share);
    }
  }

  /** A colour from no photo. */
  public SubjectColour(String name, Lab lab) {
    this(name, lab, 0, "");
  }

  /** The same colour under another name. */
  public SubjectColour withName(String changed) {
    return new SubjectColour(changed, lab, share, photo);
  }
}
