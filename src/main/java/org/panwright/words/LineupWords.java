package org.panwright.words;

/** Words for lineups as a whole. */
public final class LineupWords {
  /** Beside the choice of lineup. */
  public static final String LINEUP = "Lineup";

  /** Shown where the kit has no lineup yet. */
  public static final String NONE = "no lineup yet";

  /** Makes a new one. */
  public static final String NEW = "_New lineup…";

  /** Makes a copy of the one looked at. */
  public static final String DUPLICATE = "_Duplicate this lineup";

  /** Gives the one looked at another name. */
  public static final String RENAME = "_Rename this lineup…";

  /** Removes the one looked at. */
  public static final String REMOVE = "Re_move this lineup";

  /** The button with the choices above. */
  public static final String MORE = "More for this lineup";

  /** Title of the form for a new one. */
  public static final String NEW_TITLE = "New lineup";

  /** Accepts the form for a new one. */
  public static final String NEW_ACCEPT = "Add lineup";

  /** Title of the form for another name. */
  public static final String RENAME_TITLE = "Rename lineup";

  /** Accepts another name. */
  public static final String RENAME_ACCEPT = "Rename";

  /** A field for the name. */
  public static final String NAME = "Name";

  /** A field for the box. */
  public static final String FOR_BOX = "For box";

  /** Said under an empty name. */
  public static final String NAME_NEEDED = "Give the lineup a name.";

  /** Title when a lineup is asked for and there is no box. */
  public static final String NO_BOX_TITLE = "There is no box yet";

  /** What to do then. */
  public static final String NO_BOX =
      "A lineup says what sits in the wells of a box, so a box comes first. Its first lineup is"
          + " added with it.";

  /** Goes on to a new box. */
  public static final String MAKE_BOX = "Make a box…";

  private LineupWords() {}

  /** The name a new lineup has at first. */
  public static String newName(int number) {
    return "Lineup " + number;
  }

  /** A choice of lineup with the box it is for. */
  public static String choice(String lineup, String box) {
    return lineup + "  ·  " + box;
  }

  /** The name of a copy. */
  public static String copyOf(String name) {
    return name + " (copy)";
  }
}
