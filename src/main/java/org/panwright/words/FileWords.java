package org.panwright.words;

/** Words for opening and saving kits. */
public final class FileWords {
  /** In the menu. */
  public static final String NEW = "_New kit";

  /** In the menu. */
  public static final String OPEN = "_Open…";

  /** In the menu. */
  public static final String RECENT = "Open _recent";

  /** In the menu while nothing was opened yet. */
  public static final String NO_RECENT = "nothing yet";

  /** In the menu. */
  public static final String DEMO = "Open the _demo kit";

  /** In the menu. */
  public static final String SAVE = "_Save";

  /** In the menu. */
  public static final String SAVE_AS = "Save _as…";

  /** In the menu. */
  public static final String RENAME = "Rena_me kit…";

  /** In the menu. */
  public static final String CLOSE = "_Close window";

  /** Title of the list of files to open. */
  public static final String OPEN_TITLE = "Open a kit";

  /** Title of the list of files to save to. */
  public static final String SAVE_TITLE = "Save the kit";

  /** The kind of file. */
  public static final String KIND = "Kits";

  /** The name of a new kit. */
  public static final String NEW_NAME = "New kit";

  /** Said as a tip where the kit has no file yet. */
  public static final String NO_FILE = "not saved in a file yet";

  /** Title of the question before changes would be lost. */
  public static final String UNSAVED_TITLE = "Keep the changes?";

  /** Saves before going on. */
  public static final String SAVE_FIRST = "Save changes";

  /** Goes on without saving. */
  public static final String DISCARD = "Discard changes";

  /** Does not go on. */
  public static final String STAY = "Keep working";

  /** Title when a file could not be opened. */
  public static final String CANNOT_OPEN = "This kit could not be opened";

  /** Title when a kit could not be saved. */
  public static final String CANNOT_SAVE = "The kit is not saved yet";

  /** Saves elsewhere. */
  public static final String SAVE_ELSEWHERE = "Save under another name…";

  /** Opens the content before the last save. */
  public static final String OPEN_BACKUP = "Open the backup";

  /** Leaves it. */
  public static final String LEAVE_CLOSED = "Leave it closed";

  /** Title of the form for another name. */
  public static final String RENAME_TITLE = "Rename kit";

  /** Accepts another name. */
  public static final String RENAME_ACCEPT = "Rename";

  /** Field. */
  public static final String NAME = "Name";

  /** Takes a notice away. */
  public static final String NOTICE_SEEN = "All right";

  /** Shows all notices. */
  public static final String ALL_NOTICES = "Show all";

  /** Title of the list of all notices. */
  public static final String NOTICES_TITLE = "About this kit";

  /** Beside the name of a kit that is for looking only. */
  public static final String FOR_LOOKING = "for looking only";

  private FileWords() {}

  /** What would be lost. */
  public static String unsavedSentence(String kit) {
    return "“%s” has changes that are not saved.".formatted(kit);
  }

  /** The first notice and how many more there are. */
  public static String firstOf(String first, int more) {
    return more == 0 ? first : "%s (and %d more)".formatted(first, more);
  }

  /** The kit's name as shown in the bar. */
  public static String name(String kit, boolean unsaved, boolean forLooking) {
    return (unsaved ? WindowWords.UNSAVED_MARK + " " : "")
        + kit
        + (forLooking ? "  –  " + FOR_LOOKING : "");
  }
}
