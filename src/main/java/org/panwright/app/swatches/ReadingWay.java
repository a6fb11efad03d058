package org.panwright.app.swatches;

import javafx.scene.layout.Region;

/** One way of reading swatches off a picture: what lies on it, and what is shown beside it. */
public interface ReadingWay {
  /** What it says of itself. */
  WayWords words();

  /** Its marks on the picture. */
  PictureMarks marks();

  /** What is chosen and read, beside the picture. */
  Region content();

  /** The button that keeps what was read, always in sight. */
  Region foot();

  /** Says whether it is the way chosen; one that is not does no work. */
  void setChosen(boolean chosen);
}
