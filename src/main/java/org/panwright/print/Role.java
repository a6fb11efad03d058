package org.panwright.print;

/** What a group of marks is to someone who has the sheet read aloud. */
public enum Role {
  /** The title of a sheet. */
  TITLE,
  /** The heading of a part of a sheet. */
  HEADING,
  /** A part of a sheet with groups of its own. */
  SECTION,
  /** Text that belongs together; its other marks are decoration. */
  PARAGRAPH,
  /** A picture, told by its words. */
  FIGURE,
  /** Nothing to tell: rulers, cut marks, fields to paint. */
  DECORATION
}
