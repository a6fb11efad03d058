package org.panwright.words;

/** Words of the window's frame: its bar, its menus and the choice of view. */
public final class WindowWords {
  /** The name of the program. */
  public static final String PROGRAM = "Panwright";

  /** The view with shelf, box, mix grid and ring. */
  public static final String PLAN = "Plan";

  /** The view of all that is printed. */
  public static final String PAPERS = "Papers";

  /** What the row of views is, for readers of the screen. */
  public static final String VIEWS = "Choice of view";

  /** The menu of files. */
  public static final String KIT_MENU = "_Kit";

  /** The menu of edits. */
  public static final String EDIT_MENU = "_Edit";

  /** The menu of the shelf. */
  public static final String SHELF_MENU = "_Shelf";

  /** The menu of boxes and lineups. */
  public static final String BOX_MENU = "_Box and lineup";

  /** The menu of views and looks. */
  public static final String VIEW_MENU = "_View";

  /** The menu of explanations. */
  public static final String HELP_MENU = "_Help";

  /** Nothing to undo. */
  public static final String UNDO = "Undo";

  /** Nothing to redo. */
  public static final String REDO = "Redo";

  /** The light look. */
  public static final String LIGHT = "_Light window";

  /** The dark look. */
  public static final String DARK = "_Dark window";

  /** Moves the keyboard. */
  public static final String NEXT_PANE = "_Next part of the view";

  /** Moves the keyboard. */
  public static final String PREVIOUS_PANE = "_Previous part of the view";

  /** Puts the dividers back. */
  public static final String EVEN_OUT = "_Usual sizes of the panes";

  /** What "about" is called. */
  public static final String ABOUT = "_About Panwright";

  /** The version of a program that was never packaged. */
  public static final String UNBUILT = "(development)";

  /** The dot beside the kit's name while something is not saved. */
  public static final String UNSAVED_MARK = "●";

  private WindowWords() {}

  /** The label of undo. */
  public static String undo(String edit) {
    return UNDO + ": " + edit;
  }

  /** The label of redo. */
  public static String redo(String edit) {
    return REDO + ": " + edit;
  }

  /** The title of the window. */
  public static String title(String kit, String file, boolean unsaved) {
    String where = file.isEmpty() ? "" : " (" + file + ")";
    return (unsaved ? UNSAVED_MARK + " " : "") + kit + where + " – " + PROGRAM;
  }

  /** What "about" says. */
  public static String about(String version) {
    return "%s %s\n\nA workbench for the travelling watercolourist: which paints go into the box, and what they mix.\n\nColours are predictions. A painted swatch is the judge.\n\nLicence: Apache 2.0."
        .formatted(PROGRAM, version);
  }
}
