package org.panwright.kit.table;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What a column of a table of paints can hold. */
public enum TableColumn {
  /** The label of the well; only in the table of a lineup. */
  WELL("well", "position", "place", "pan", "nr", "no"),
  /** How full the well is; only in the table of a lineup. */
  FILL("fill", "filled"),
  NAME("name", "paint", "colour", "color", "title"),
  MAKER("maker", "made by", "manufacturer"),
  OWNERSHIP("ownership", "status", "have"),
  /** Colour Index names, several joined by +, each perhaps with its share in percent. */
  PIGMENTS("pigments", "pigment", "colour index", "ci", "c.i.", "codes", "code"),
  TRANSPARENCY("transparency", "opacity"),
  STAINING("staining", "stain"),
  GRANULATION("granulation", "granulating"),
  LIGHTFASTNESS("lightfastness", "lightfast", "light fastness"),
  NOTE("note", "notes", "remark", "remarks", "comment");

  private final List<String> headers;

  TableColumn(String... headers) {
    this.headers = List.of(headers);
  }

  /** The head under which it is written. */
  public String header() {
    return headers.get(0);
  }

  /** Whether a head means this column, capitals apart. */
  boolean isMeantBy(String head) {
    return headers.contains(head.strip().toLowerCase(Locale.ROOT));
  }

  /** The columns of a shelf. */
  public static List<TableColumn> ofShelf() {
    return Arrays.stream(values()).filter(column -> column != WELL && column != FILL).toList();
  }

  /** The columns of a lineup: all. */
  public static List<TableColumn> ofLineup() {
    return List.of(values());
  }
}
