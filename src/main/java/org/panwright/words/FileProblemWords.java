package org.panwright.words;

import java.nio.file.Path;
import org.panwright.kit.FileProblem;

/**
 * What is said about a file that could not be opened or saved, or that had to be put right: what
 * happened, then what to do, naming the file and the field.
 */
public final class FileProblemWords {
  private static final String LOST_NOTHING = "Nothing in it was changed.";

  private FileProblemWords() {}

  /** What happened and what to do, in that order. */
  public static String sentence(FileProblem problem) {
    return happened(problem) + " " + advice(problem);
  }

  /** What happened, as a whole sentence. */
  public static String happened(FileProblem problem) {
    String file = file(problem.file());
    if (problem instanceof FileProblem.WithBackup both) {
      return happened(both.problem());
    } else if (problem instanceof FileProblem.Missing) {
      return "There is no file " + file + ".";
    } else if (problem instanceof FileProblem.CannotRead it) {
      return file + " could not be read" + because(it.systemSays()) + ".";
    } else if (problem instanceof FileProblem.TooLarge it) {
      return "%s is too large for a kit: %d MB, where %d MB is the most."
          .formatted(file, megabytes(it.bytes()), megabytes(it.mostBytes()));
    } else if (problem instanceof FileProblem.Empty) {
      return file + " is empty.";
    } else if (problem instanceof FileProblem.CutShort it) {
      return file + " breaks off in line " + it.line() + ": its end is missing.";
    } else if (problem instanceof FileProblem.NotJson it) {
      return "%s cannot be understood from line %d, column %d on: what stands there is no JSON text."
          .formatted(file, it.line(), it.column());
    } else if (problem instanceof FileProblem.FieldTwice it) {
      return "%s has the field %s twice in one place, in line %d."
          .formatted(file, WordParts.quoted(it.field()), it.line());
    } else if (problem instanceof FileProblem.NotAKit) {
      return file
          + " is not a kit: that has a field schemaVersion with a whole number, and a field shelf.";
    } else if (problem instanceof FileProblem.NotABox) {
      return file
          + " holds no box: that has a field schemaVersion with a whole number, and a list boxes.";
    } else if (problem instanceof FileProblem.BadField it) {
      return file + " cannot be opened: " + FieldFaultWords.clause(it.field(), it.fault()) + ".";
    } else if (problem instanceof FileProblem.Newer it) {
      return "%s was written by a later version of the program (its format is %s, this one knows %d)."
          .formatted(file, WordParts.shortened(it.version()), it.known());
    }
    return noticed(problem, file);
  }

  private static String noticed(FileProblem problem, String file) {
    if (problem instanceof FileProblem.LeftOut it) {
      String name = it.name().isBlank() ? "" : " " + WordParts.quoted(it.name());
      return "%s%s in %s was left out: %s."
          .formatted(part(it.field()), name, file, FieldFaultWords.clause(it.at(), it.fault()));
    } else if (problem instanceof FileProblem.Replaced it) {
      return "In %s %s; %s."
          .formatted(file, FieldFaultWords.clause(it.field(), it.fault()), used(it));
    } else if (problem instanceof FileProblem.FolderClosed) {
      return file + " was not saved: nothing may be written in its folder.";
    } else if (problem instanceof FileProblem.FileProtected) {
      return file + " was not saved: the file is marked as read-only.";
    } else if (problem instanceof FileProblem.FolderMissing) {
      return file + " was not saved: its folder does not exist.";
    } else if (problem instanceof FileProblem.DiskFull) {
      return file + " was not saved: the disk is full.";
    } else if (problem instanceof FileProblem.CannotWrite it) {
      return file + " was not saved: writing broke off" + because(it.systemSays()) + ".";
    } else if (problem instanceof FileProblem.ChangedElsewhere) {
      return file
          + " was not saved: it was changed by another window or program since it was opened here.";
    } else if (problem instanceof FileProblem.OpenedForLooking) {
      return file + " was not saved: it comes from a later version of the program.";
    } else if (problem instanceof FileProblem.NewerInTheWay) {
      return "The kit was not saved: "
          + file
          + " holds a kit from a later version of the program, which would lose by it.";
    } else if (problem instanceof FileProblem.MovedAside it) {
      return "What stood in %s could not be read as a kit; it was kept as %s."
          .formatted(file, file(it.newName()));
    }
    throw new IllegalArgumentException("no words for " + problem);
  }

  /** What to do about it, as a whole sentence. */
  public static String advice(FileProblem problem) {
    if (problem instanceof FileProblem.WithBackup both) {
      return LOST_NOTHING
          + " The content before the last save is in "
          + file(both.backup())
          + ": open that one and save it under a new name.";
    } else if (problem instanceof FileProblem.Missing) {
      return "Check the name, or look for the file where you moved it.";
    } else if (problem instanceof FileProblem.CannotRead) {
      return "Check that it is a file, that the disk is connected and that you may read it.";
    } else if (problem instanceof FileProblem.TooLarge || problem instanceof FileProblem.NotAKit) {
      return "Choose a file that ends in .kit.json. " + LOST_NOTHING;
    } else if (problem instanceof FileProblem.NotABox) {
      return "Choose a file that ends in .box.json. " + LOST_NOTHING;
    } else if (problem instanceof FileProblem.Empty
        || problem instanceof FileProblem.CutShort
        || problem instanceof FileProblem.NotJson) {
      return LOST_NOTHING
          + " If you have a copy, open the copy; otherwise mend it in a text editor.";
    } else if (problem instanceof FileProblem.FieldTwice
        || problem instanceof FileProblem.BadField) {
      return LOST_NOTHING + " Put that right in a text editor and open it again.";
    } else if (problem instanceof FileProblem.Newer) {
      return "You can look at it, and save it under another name to work on; for all it holds, use"
          + " the later version.";
    } else if (problem instanceof FileProblem.LeftOut) {
      return "It stays in the file as it is; put that right in a text editor to have it back.";
    }
    return adviceOnSaving(problem);
  }

  private static String adviceOnSaving(FileProblem problem) {
    if (problem instanceof FileProblem.Replaced) {
      return "Check it, and correct it if need be.";
    } else if (problem instanceof FileProblem.FolderClosed
        || problem instanceof FileProblem.FileProtected
        || problem instanceof FileProblem.NewerInTheWay) {
      return "Save it under another name or in another folder.";
    } else if (problem instanceof FileProblem.FolderMissing) {
      return "Make the folder again, or save in another one.";
    } else if (problem instanceof FileProblem.DiskFull) {
      return "The file is as it was before. Make room and save again, or save on another disk.";
    } else if (problem instanceof FileProblem.CannotWrite) {
      return "The file is as it was before. Save again, or save on another disk.";
    } else if (problem instanceof FileProblem.ChangedElsewhere) {
      return "Save your changes under another name, then compare the two.";
    } else if (problem instanceof FileProblem.OpenedForLooking) {
      return "Save it under another name.";
    } else if (problem instanceof FileProblem.MovedAside) {
      return "Look into that file if you miss something.";
    }
    throw new IllegalArgumentException("no advice for " + problem);
  }

  /** What kind of thing stands at a path such as {@code boxes[0].wells[3]}. */
  private static String part(String path) {
    String list = path.substring(path.lastIndexOf('.') + 1).replaceAll("\\[\\d+]$", "");
    return switch (list) {
      case "paints" -> "The paint";
      case "boxes" -> "The box";
      case "wells" -> "The well";
      case "lineups" -> "The lineup";
      case "fillings" -> "The paint in a well";
      case "outings" -> "The outing";
      case "subjects" -> "The subject colour";
      case "tubes" -> "The tube";
      case "filled" -> "What is in a well";
      case "pans" -> "The kind of pan";
      case "parts" -> "The part of a box";
      default -> "The part " + path;
    };
  }

  private static String used(FileProblem.Replaced it) {
    if (it.fault() instanceof FileProblem.FieldFault.SharesSum) {
      return "they were scaled so that they do";
    }
    return it.standIn().isBlank()
        ? "it is left aside"
        : WordParts.quoted(it.standIn()) + " is used instead";
  }

  private static String file(Path file) {
    Path name = file.getFileName();
    return WordParts.quoted(name == null ? file.toString() : name.toString());
  }

  private static String because(String systemSays) {
    return systemSays.isBlank()
        ? ""
        : " (the system says: " + WordParts.shortened(systemSays) + ")";
  }

  private static long megabytes(long bytes) {
    return Math.round(bytes / (1024.0 * 1024.0));
  }
}
