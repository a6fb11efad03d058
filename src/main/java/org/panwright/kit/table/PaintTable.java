package org.panwright.kit.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.paint.Paint;

/** Shelves and lineups as tables of text: a row of heads, then one row a paint or a well. */
public final class PaintTable {
  private PaintTable() {}

  /** The shelf in its order. Measured colours and swatches stay in the kit's own file. */
  public static List<List<String>> ofShelf(Kit kit) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(heads(TableColumn.ofShelf()));
    for (Paint paint : kit.shelf().paints()) {
      rows.add(cells(TableColumn.ofShelf(), paint, "", ""));
    }
    return rows;
  }

  /** A lineup, every well in the order of the box, the empty ones without a paint. */
  public static List<List<String>> ofLineup(Kit kit, Lineup lineup) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(heads(TableColumn.ofLineup()));
    for (Well well : kit.boxOf(lineup).wells()) {
      Optional<Filling> filling = lineup.in(well.id());
      rows.add(
          filling
              .flatMap(held -> kit.shelf().find(held.paintId()))
              .map(
                  paint ->
                      cells(
                          TableColumn.ofLineup(),
                          paint,
                          well.label(),
                          WordCell.write(filling.get().fill())))
              .orElseGet(
                  () ->
                      TableColumn.ofLineup().stream()
                          .map(column -> column == TableColumn.WELL ? well.label() : "")
                          .toList()));
    }
    return rows;
  }

  private static List<String> heads(List<TableColumn> columns) {
    return columns.stream().map(TableColumn::header).toList();
  }

  private static List<String> cells(
      List<TableColumn> columns, Paint paint, String well, String fill) {
    return columns.stream().map(column -> cell(column, paint, well, fill)).toList();
  }

  private static String cell(TableColumn column, Paint paint, String well, String fill) {
    return switch (column) {
      case WELL -> well;
      case FILL -> fill;
      case NAME -> paint.name();
      case MAKER -> paint.maker();
      case OWNERSHIP -> WordCell.write(paint.ownership());
      case PIGMENTS -> PigmentCell.write(paint.pigments());
      case TRANSPARENCY -> WordCell.write(paint.handling().transparency());
      case STAINING -> WordCell.write(paint.handling().staining());
      case GRANULATION -> WordCell.write(paint.handling().granulation());
      case LIGHTFASTNESS -> WordCell.write(paint.handling().lightfastness());
      case NOTE -> paint.note();
    };
  }
}
