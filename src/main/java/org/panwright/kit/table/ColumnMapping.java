package org.panwright.kit.table;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which column of a table in hand holds what.
 *
 * @param places the number from 0 of the table's column; what has none is not read
 */
public record ColumnMapping(Map<TableColumn, Integer> places) {
  public ColumnMapping {
    places = Map.copyOf(places);
  }

  /** What the heads of a table say; of two heads for one thing the first counts. */
  public static ColumnMapping guess(List<String> heads) {
    Map<TableColumn, Integer> places = new EnumMap<>(TableColumn.class);
    Set<Integer> taken = new HashSet<>();
    for (TableColumn column : TableColumn.values()) {
      for (int place = 0; place < heads.size(); place++) {
        if (column.isMeantBy(heads.get(place)) && !places.containsKey(column) && taken.add(place)) {
          places.put(column, place);
        }
      }
    }
    return new ColumnMapping(places);
  }

  /** The mapping with a column read from another place, or not at all. */
  public ColumnMapping with(TableColumn column, Optional<Integer> place) {
    Map<TableColumn, Integer> changed = new EnumMap<>(TableColumn.class);
    changed.putAll(places);
    place.ifPresentOrElse(at -> changed.put(column, at), () -> changed.remove(column));
    return new ColumnMapping(changed);
  }

  /** Where a column is read from. */
  public Optional<Integer> place(TableColumn column) {
    return Optional.ofNullable(places.get(column));
  }

  /** The text of a column in a row; empty where it is not read or the row is too short. */
  String cell(TableColumn column, List<String> cells) {
    return place(column).filter(at -> at < cells.size()).map(cells::get).orElse("");
  }
}
