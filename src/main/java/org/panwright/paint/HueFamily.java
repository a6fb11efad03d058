package org.panwright.paint;

/** The family a painter files a paint under, in the usual order round a box. */
public enum HueFamily {
  YELLOW,
  ORANGE,
  RED,
  ROSE,
  VIOLET,
  BLUE,
  TURQUOISE,
  GREEN,
  YELLOW_GREEN,
  EARTH_YELLOW,
  EARTH_ORANGE,
  EARTH_RED,
  BROWN,
  BLACK,
  GREY,
  WHITE
}
