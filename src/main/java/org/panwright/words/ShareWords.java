package org.panwright.words;

import java.util.List;
import java.util.stream.Collectors;
import org.panwright.kit.TableEdit;
import org.panwright.kit.table.CellFault;
import org.panwright.kit.table.Duplicates;
import org.panwright.kit.table.TableColumn;
import org.panwright.kit.table.TablePlan;
import org.panwright.kit.table.TakenRow;
import org.panwright.swatch.table.TableFault;

/** What is said about passing things on to other programs and taking tables in. */
public final class ShareWords {
  public static final String MENU = "_Share";
  public static final String COPY = "Save a copy of the _kit to share…";
  public static final String SHELF_OUT = "Save the _shelf as a table…";
  public static final String LINEUP_OUT = "Save the _lineup as a table…";
  public static final String SHELF_IN = "Take paints _in from a table…";
  public static final String LINEUP_IN = "Fill the lineup from a _table…";
  public static final String CSS_OUT = "Save colours as a st_yle sheet…";
  public static final String PALETTE_OUT = "Save colours as a _palette…";
  public static final String GRID_OUT = "Save a picture of the _grid…";
  public static final String RING_OUT = "Save a picture of the _ring…";
  public static final String BOX_OUT = "Save a picture of the _box…";

  public static final String TABLE_KIND = "Tables as text";
  public static final String CSS_KIND = "Style sheets";
  public static final String PALETTE_KIND = "Palettes as text";
  public static final String PICTURE_KIND = "Pictures";
  public static final String SAVE_TITLE = "Save to share";
  public static final String OPEN_TITLE = "Open a table";
  public static final String CANNOT_SAVE = "Not saved";
  public static final String CANNOT_READ = "The table cannot be read";
  public static final String SAVED = "Saved";

  public static final String COLUMNS = "Which column holds what";
  public static final String NOT_READ = "not read";
  public static final String KNOWN_PAINTS = "Paints that are there already";
  public static final String ROWS = "What each row would do";
  public static final String LINE = "Line";
  public static final String PAINT = "Paint";
  public static final String PIGMENTS = "Pigments";
  public static final String OUTCOME = "Outcome";
  public static final String ACCEPT = "Take in";

  private ShareWords() {}

  /** Over the form that takes a table in. */
  public static String importTitle(boolean lineup) {
    return lineup ? "Fill the lineup from a table" : "Take paints in from a table";
  }

  /** How a table was read. */
  public static String readAs(String file, int rows, String encoding, char separator) {
    String between =
        switch (separator) {
          case ';' -> "semicolons";
          case '\t' -> "tabs";
          default -> "commas";
        };
    return "%s: %d rows, %s, cells between %s. Nothing is taken in before you say so."
        .formatted(file, rows, encoding, between);
  }

  /** A column of a table of paints. */
  public static String column(TableColumn column) {
    String head = column.header();
    return head.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + head.substring(1);
  }

  /** A column of the table in hand by its number from 0 and its head. */
  public static String place(int place, String head) {
    return head.isBlank()
        ? "column " + (place + 1)
        : WordParts.shortened(head) + " (column " + (place + 1) + ")";
  }

  /** A choice about paints that are there already. */
  public static String duplicates(Duplicates choice) {
    return switch (choice) {
      case KEEP_MINE -> "keep mine as they are";
      case TAKE_OVER -> "take over what the table says; colours stay";
      case ADD_AGAIN -> "add them again";
    };
  }

  /** What becomes of a row. */
  public static String outcome(TakenRow row) {
    return switch (row.outcome()) {
      case NEW -> "new paint";
      case KEPT -> "there already, stays";
      case CHANGED -> "there already, changes";
      case NO_PAINT -> "well stays empty";
      case AT_FAULT ->
          row.faults().stream().map(ShareWords::fault).collect(Collectors.joining("; "));
    };
  }

  /** What taking the table in comes to. */
  public static String summary(TablePlan plan) {
    long faults = plan.count(TakenRow.Outcome.AT_FAULT);
    String rows =
        "%d new, %d there already, %d to change"
            .formatted(
                plan.count(TakenRow.Outcome.NEW),
                plan.count(TakenRow.Outcome.KEPT),
                plan.count(TakenRow.Outcome.CHANGED));
    return faults == 0
        ? rows + "."
        : rows
            + "; %d %s cannot be used and would be left out."
                .formatted(faults, faults == 1 ? "row" : "rows");
  }

  /** One cell that cannot be used. */
  public static String fault(CellFault fault) {
    return column(fault.column()) + " " + predicate(fault);
  }

  private static String predicate(CellFault fault) {
    if (fault instanceof CellFault.Empty) {
      return "is empty";
    } else if (fault instanceof CellFault.NoPigmentName it) {
      return "must be Colour Index names such as PB29 + PBk7 but is "
          + WordParts.quoted(it.found());
    } else if (fault instanceof CellFault.UnknownPigment it) {
      return "names %s, a pigment this program has no figures for"
          .formatted(WordParts.quoted(it.found()));
    } else if (fault instanceof CellFault.BadShare it) {
      return "must give every pigment a share above 0 %, or none, but is "
          + WordParts.quoted(it.found());
    } else if (fault instanceof CellFault.UnknownWord it) {
      return "must be one of %s but is %s"
          .formatted(String.join(", ", it.known()), WordParts.quoted(it.found()));
    } else if (fault instanceof CellFault.NoSuchWell it) {
      return "names %s, which the box does not have".formatted(WordParts.quoted(it.found()));
    } else if (fault instanceof CellFault.WellTwice it) {
      return "names %s, which an earlier row fills".formatted(WordParts.quoted(it.found()));
    }
    throw new IllegalArgumentException("no words for " + fault);
  }

  /** Why a file cannot be read as a table. */
  public static String unreadable(String file, TableFault fault) {
    if (fault instanceof TableFault.NoTable) {
      return file
          + " holds no table: it needs a row of heads and at least one row under it. Nothing was"
          + " changed.";
    } else if (fault instanceof TableFault.CutShort cut) {
      return "%s has a quotation mark in the row of line %d that never closes. Close it and try again; nothing was changed."
          .formatted(file, cut.line());
    }
    return SwatchWords.sentence(file, fault) + " Nothing was changed.";
  }

  /** The file is too large to be a table of paints. */
  public static String tooLarge(String file, long mostMegabytes) {
    return "%s is larger than %d MB; no table of paints is. Nothing was changed."
        .formatted(file, mostMegabytes);
  }

  /** The file cannot be read at all. */
  public static String noFile(String file) {
    return file + " cannot be read. Check that it is there and that you may read it.";
  }

  /** A file was written. */
  public static String saved(String file) {
    return file + " is saved.";
  }

  /** A picture was written. */
  public static String savedPicture(String file, double widthMm, double heightMm) {
    return "%s is saved: %.0f × %.0f mm at 300 dots per inch.".formatted(file, widthMm, heightMm);
  }

  /** A colour of a paint: its masstone, or a wash of it. */
  public static String toneName(String paint, String wash) {
    return wash.isEmpty() ? paint : paint + " " + wash;
  }

  /** The title of a list of colours. */
  public static String colours(String kit, String lineup) {
    return "%s: colours of %s, predicted dry on the kit's paper in daylight D65"
        .formatted(kit, lineup);
  }

  /** What taking a table in does, for undo. */
  static String ofEdit(TableEdit edit) {
    int paints = edit.added().size() + edit.changed().size();
    List<String> parts =
        List.of(
            edit.lineup().map(l -> "fill lineup " + l.name() + " from a table").orElse(""),
            paints == 0 ? "" : "take in %d %s".formatted(paints, paints == 1 ? "paint" : "paints"));
    return Lists.and(parts.stream().filter(part -> !part.isEmpty()).toList());
  }
}
