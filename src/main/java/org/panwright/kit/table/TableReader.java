package org.panwright.kit.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.panwright.kit.Box;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.kit.table.TakenRow.Outcome;
import org.panwright.paint.Handling;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Swatchbook;

/**
 * Works out what a table of paints would do to a kit: onto the shelf, or into the wells of a lineup
 * and, where paints are missing, onto the shelf as well. One use.
 */
public final class TableReader {
  private final Kit kit;
  private final PigmentLibrary library;
  private final ColumnMapping mapping;
  private final Duplicates duplicates;
  private final Optional<Lineup> lineup;
  private final Map<String, Paint> known = new HashMap<>();
  private final Set<String> takenIds = new HashSet<>();
  private final Map<String, Well> wells = new HashMap<>();
  private final Map<String, Filling> fillings = new LinkedHashMap<>();
  private final Set<String> filled = new HashSet<>();
  private final List<Paint> added = new ArrayList<>();
  private final Map<String, Paint> changed = new LinkedHashMap<>();
  private int nextId = 1;

  private TableReader(
      Kit kit,
      PigmentLibrary library,
      ColumnMapping mapping,
      Duplicates duplicates,
      Optional<Lineup> lineup) {
    this.kit = kit;
    this.library = library;
    this.mapping = mapping;
    this.duplicates = duplicates;
    this.lineup = lineup;
    for (Paint paint : kit.shelf().paints()) {
      known.putIfAbsent(key(paint.name(), paint.pigments()), paint);
      takenIds.add(paint.id());
    }
    lineup.map(kit::boxOf).map(Box::wells).orElse(List.of()).forEach(this::remember);
    lineup.ifPresent(l -> fillings.putAll(l.fillings()));
  }

  private void remember(Well well) {
    wells.putIfAbsent(bare(well.label()), well);
  }

  /** What a table would do to the shelf. */
  public static TablePlan toShelf(
      List<SourceRow> rows,
      ColumnMapping mapping,
      Duplicates duplicates,
      Kit kit,
      PigmentLibrary library) {
    return new TableReader(kit, library, mapping, duplicates, Optional.empty()).plan(rows);
  }

  /** What a table would do to a lineup; wells the table does not name keep their paint. */
  public static TablePlan toLineup(
      List<SourceRow> rows,
      ColumnMapping mapping,
      Duplicates duplicates,
      Kit kit,
      Lineup lineup,
      PigmentLibrary library) {
    return new TableReader(kit, library, mapping, duplicates, Optional.of(lineup)).plan(rows);
  }

  private TablePlan plan(List<SourceRow> rows) {
    List<TakenRow> taken = rows.stream().map(this::take).toList();
    Optional<Lineup> refilled =
        lineup.map(l -> l.withFillings(fillings)).filter(l -> !l.equals(lineup.orElseThrow()));
    return new TablePlan(taken, added, List.copyOf(changed.values()), refilled);
  }

  private TakenRow take(SourceRow row) {
    List<CellFault> faults = new ArrayList<>();
    Optional<Well> well = lineup.isPresent() ? well(row, faults) : Optional.empty();
    boolean empty =
        lineup.isPresent()
            && cell(TableColumn.NAME, row).isBlank()
            && cell(TableColumn.PIGMENTS, row).isBlank();
    if (empty) {
      if (faults.isEmpty()) {
        filled.add(well.orElseThrow().id());
        fillings.remove(well.orElseThrow().id());
        return new TakenRow(row.line(), Outcome.NO_PAINT, List.of(), List.of());
      }
      return new TakenRow(row.line(), Outcome.AT_FAULT, List.of(), faults);
    }
    Optional<Fill> fill = read(faults, () -> fill(row, well));
    Optional<Paint> paint = paint(row, faults);
    if (!faults.isEmpty()) {
      return new TakenRow(row.line(), Outcome.AT_FAULT, List.of(), faults);
    }
    TakenRow taken = shelve(row, paint.orElseThrow());
    well.ifPresent(
        place -> {
          filled.add(place.id());
          fillings.put(place.id(), new Filling(taken.paints().get(0).id(), fill.orElseThrow()));
        });
    return taken;
  }

  /** The paint a row describes, under an id that does not count yet. */
  private Optional<Paint> paint(SourceRow row, List<CellFault> faults) {
    Optional<List<PigmentShare>> pigments =
        read(faults, () -> PigmentCell.read(cell(TableColumn.PIGMENTS, row), library));
    Optional<Handling> usual = pigments.flatMap(library::usualHandling);
    Optional<Ownership> ownership =
        read(
            faults,
            () ->
                WordCell.read(
                    TableColumn.OWNERSHIP, cell(TableColumn.OWNERSHIP, row), Ownership.OWNED));
    Handling handling = usual.map(u -> handling(row, u, faults)).orElse(null);
    if (!faults.isEmpty() || handling == null) {
      return Optional.empty();
    }
    String name = cell(TableColumn.NAME, row);
    String codes = PigmentCell.write(pigments.orElseThrow());
    return Optional.of(
        new Paint(
            "row",
            name.isBlank() ? codes : name,
            cell(TableColumn.MAKER, row),
            pigments.orElseThrow(),
            handling,
            ownership.orElseThrow(),
            Optional.empty(),
            cell(TableColumn.NOTE, row),
            Swatchbook.EMPTY));
  }

  private Handling handling(SourceRow row, Handling usual, List<CellFault> faults) {
    return new Handling(
        word(row, TableColumn.TRANSPARENCY, usual.transparency(), faults),
        word(row, TableColumn.STAINING, usual.staining(), faults),
        word(row, TableColumn.GRANULATION, usual.granulation(), faults),
        word(row, TableColumn.LIGHTFASTNESS, usual.lightfastness(), faults));
  }

  private <E extends Enum<E>> E word(
      SourceRow row, TableColumn column, E usual, List<CellFault> faults) {
    return read(faults, () -> WordCell.read(column, cell(column, row), usual)).orElse(usual);
  }

  private TakenRow shelve(SourceRow row, Paint described) {
    String key = key(described.name(), described.pigments());
    Paint mine = known.get(key);
    // A lineup names paints of the shelf, so there one that is known is never added again.
    if (mine == null || (duplicates == Duplicates.ADD_AGAIN && lineup.isEmpty())) {
      Paint fresh = described.withId(freshId());
      known.putIfAbsent(key, fresh);
      added.add(fresh);
      return new TakenRow(row.line(), Outcome.NEW, List.of(fresh), List.of());
    }
    boolean isOnShelf = kit.shelf().find(mine.id()).isPresent();
    if (duplicates == Duplicates.TAKE_OVER && isOnShelf) {
      Paint after = takenOver(mine, described);
      if (!after.equals(mine)) {
        changed.put(mine.id(), after);
        known.put(key, after);
        return new TakenRow(row.line(), Outcome.CHANGED, List.of(after), List.of());
      }
    }
    return new TakenRow(row.line(), Outcome.KEPT, List.of(mine), List.of());
  }

  /** Only what the table has a column for. */
  private Paint takenOver(Paint mine, Paint described) {
    Handling was = mine.handling();
    Handling now = described.handling();
    return new Paint(
        mine.id(),
        mine.name(),
        has(TableColumn.MAKER) ? described.maker() : mine.maker(),
        mine.pigments(),
        new Handling(
            has(TableColumn.TRANSPARENCY) ? now.transparency() : was.transparency(),
            has(TableColumn.STAINING) ? now.staining() : was.staining(),
            has(TableColumn.GRANULATION) ? now.granulation() : was.granulation(),
            has(TableColumn.LIGHTFASTNESS) ? now.lightfastness() : was.lightfastness()),
        has(TableColumn.OWNERSHIP) ? described.ownership() : mine.ownership(),
        mine.measured(),
        has(TableColumn.NOTE) ? described.note() : mine.note(),
        mine.swatchbook());
  }

  private Optional<Well> well(SourceRow row, List<CellFault> faults) {
    return read(
        faults,
        () -> {
          String label = cell(TableColumn.WELL, row);
          if (label.isBlank()) {
            throw new CellFaultException(new CellFault.Empty(TableColumn.WELL));
          }
          Well well = wells.get(bare(label));
          if (well == null) {
            throw new CellFaultException(new CellFault.NoSuchWell(TableColumn.WELL, label));
          }
          if (filled.contains(well.id())) {
            throw new CellFaultException(new CellFault.WellTwice(TableColumn.WELL, label));
          }
          return well;
        });
  }

  private Fill fill(SourceRow row, Optional<Well> well) throws CellFaultException {
    boolean dab = well.filter(w -> w.kind() == WellKind.DAB).isPresent();
    return WordCell.read(TableColumn.FILL, cell(TableColumn.FILL, row), dab ? Fill.DAB : Fill.FULL);
  }

  private boolean has(TableColumn column) {
    return mapping.place(column).isPresent();
  }

  private String cell(TableColumn column, SourceRow row) {
    return mapping.cell(column, row.cells()).strip();
  }

  private String freshId() {
    while (!takenIds.add("paint-" + nextId)) {
      nextId++;
    }
    return "paint-" + nextId;
  }

  private static String key(String name, List<PigmentShare> pigments) {
    List<String> codes = pigments.stream().map(p -> p.pigment().toString()).sorted().toList();
    return bare(name) + "\n" + codes;
  }

  private static String bare(String text) {
    return text.strip().toLowerCase(Locale.ROOT);
  }

  private interface CellReader<T> {
    T read() throws CellFaultException;
  }

  private static <T> Optional<T> read(List<CellFault> faults, CellReader<T> reader) {
    try {
      return Optional.of(reader.read());
    } catch (CellFaultException e) {
      faults.add(e.fault());
      return Optional.empty();
    }
  }
}
