package org.panwright.kit.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.table.TakenRow.Outcome;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Staining;
import org.panwright.store.DemoKit;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.swatch.table.DelimitedText;
import org.panwright.words.ShareWords;

/** Tables of paints, through text and back, and what is wrong with them. */
class TableReaderTest {
  private static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();
  private static final Kit DEMO = DemoKit.read(LIBRARY);
  private static final Kit EMPTY = Kit.empty("empty");
  private static final Lineup QUAY = DEMO.lineup("quay").orElseThrow();

  @Test
  void aShelfComesBackThroughItsTable() throws Exception {
    TablePlan plan = plan(DelimitedText.write(PaintTable.ofShelf(DEMO)), EMPTY);
    assertThat(plan.count(Outcome.NEW)).isEqualTo(DEMO.shelf().paints().size());
    Kit filled = plan.edit().orElseThrow().apply(EMPTY);
    for (int i = 0; i < DEMO.shelf().paints().size(); i++) {
      Paint was = DEMO.shelf().paints().get(i);
      Paint now = filled.shelf().paints().get(i);
      assertThat(now.name()).isEqualTo(was.name());
      assertThat(now.codes()).isEqualTo(was.codes());
      assertThat(now.handling()).isEqualTo(was.handling());
      assertThat(now.ownership()).isEqualTo(was.ownership());
      assertThat(now.note()).isEqualTo(was.note());
      assertThat(now.pigments()).hasSameSizeAs(was.pigments());
      for (int p = 0; p < was.pigments().size(); p++) {
        assertThat(now.pigments().get(p).pigment()).isEqualTo(was.pigments().get(p).pigment());
        assertThat(now.pigments().get(p).share())
            .isEqualTo(was.pigments().get(p).share(), within(1e-9));
      }
    }
  }

  @Test
  void aLineupComesBackThroughItsTable() throws Exception {
    String text = DelimitedText.write(PaintTable.ofLineup(DEMO, QUAY));
    assertThat(lineupPlan(text, DEMO, QUAY).edit()).as("nothing to change").isEmpty();
    Kit emptied = DEMO.replacing(QUAY.withFillings(java.util.Map.of()));
    TablePlan plan = lineupPlan(text, emptied, emptied.lineup("quay").orElseThrow());
    assertThat(plan.edit().orElseThrow().apply(emptied)).isEqualTo(DEMO);
  }

  @Test
  void aLineupsTableBringsThePaintsTheShelfLacks() throws Exception {
    TablePlan plan = lineupPlan("well;paint;pigments;fill\n1;Sea blue;PB60;half\n", DEMO, QUAY);
    Kit filled = plan.edit().orElseThrow().apply(DEMO);
    Filling filling = filled.lineup("quay").orElseThrow().in(wellId("1")).orElseThrow();
    assertThat(filling.fill()).isEqualTo(Fill.HALF);
    assertThat(filled.shelf().find(filling.paintId()).orElseThrow().name()).isEqualTo("Sea blue");
    assertThat(filled.lineup("quay").orElseThrow().fillings()).hasSameSizeAs(QUAY.fillings());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "PB29 | PB29:1",
        "pb 29 | PB29:1",
        "PBR7 raw umber | PBr7 raw umber:1",
        "pbk7+pg7 | PBk7:0.5 PG7:0.5",
        "PB15:3 / PY154 | PB15:3:0.5 PY154:0.5",
        "PB29, PV19 | PB29:0.5 PV19:0.5",
        "PB29 62,5 % + PBk7 37,5 % | PB29:0.625 PBk7:0.375",
        "PB29 3 % & PBk7 1 % | PB29:0.75 PBk7:0.25"
      })
  void pigmentsAreReadAsTheyAreWritten(String cell, String wanted) throws Exception {
    List<PigmentShare> pigments = PigmentCell.read(cell, LIBRARY);
    assertThat(
            String.join(
                " ", pigments.stream().map(p -> p.pigment() + ":" + number(p.share())).toList()))
        .isEqualTo(wanted);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "a,,PB29 | a paint without a word about it",
        "'b,,' | Pigments is empty",
        "c,,XY12 | Pigments must be Colour Index names",
        "c,,PB298 | no figures for",
        "c,,PB29 60 % + PBk7 | share above 0 %",
        "c,,PB29 0 % + PBk7 5 % | share above 0 %",
        "d,strong,PB29 | Staining must be one of none, low, medium, high but is “strong”"
      })
  void aRowAtFaultIsToldByItsFieldAndLeftOut(String row, String says) throws Exception {
    TablePlan plan = plan("name,staining,pigments\n" + row + "\ngood,low,PB29\n", EMPTY);
    TakenRow taken = plan.rows().get(0);
    assertThat(taken.line()).isEqualTo(2);
    if (taken.outcome() == Outcome.NEW) {
      assertThat(says).startsWith("a paint");
    } else {
      assertThat(ShareWords.outcome(taken)).contains(says);
      assertThat(plan.added()).extracting(Paint::name).containsExactly("good");
    }
  }

  @Test
  void severalFaultsOfARowAreAllTold() throws Exception {
    TablePlan plan = plan("name,staining,ownership,pigments\nx,hard,mine,PB29\n", EMPTY);
    assertThat(plan.rows().get(0).faults())
        .extracting(CellFault::column)
        .containsExactlyInAnyOrder(TableColumn.STAINING, TableColumn.OWNERSHIP);
    assertThat(plan.edit()).isEmpty();
  }

  @Test
  void anEmptyCellMeansTheUsual() throws Exception {
    Paint paint = plan("paint,pigment\n,PB29\n", EMPTY).added().get(0);
    assertThat(paint.name()).isEqualTo("PB29");
    assertThat(paint.ownership()).isEqualTo(Ownership.OWNED);
    assertThat(paint.handling())
        .isEqualTo(LIBRARY.find(paint.pigments().get(0).pigment()).orElseThrow().handling());
  }

  @Test
  void aPaintThatIsThereIsKeptTakenOverOrAddedAgain() throws Exception {
    Paint mine = DEMO.shelf().paints().get(0);
    String text =
        "name;pigments;staining;lightfastness\n%s;%s;high;iii\n"
            .formatted(mine.name().toUpperCase(java.util.Locale.ROOT), mine.codes());
    assertThat(plan(text, DEMO, Duplicates.KEEP_MINE).edit()).isEmpty();
    Kit over = plan(text, DEMO, Duplicates.TAKE_OVER).edit().orElseThrow().apply(DEMO);
    Paint after = over.shelf().find(mine.id()).orElseThrow();
    assertThat(over.shelf().paints()).hasSameSizeAs(DEMO.shelf().paints());
    assertThat(after.name()).isEqualTo(mine.name());
    assertThat(after.handling().staining()).isEqualTo(Staining.HIGH);
    assertThat(after.handling().lightfastness()).isEqualTo(Lightfastness.III);
    assertThat(after.handling().granulation()).isEqualTo(mine.handling().granulation());
    assertThat(after.note()).isEqualTo(mine.note());
    Kit again = plan(text, DEMO, Duplicates.ADD_AGAIN).edit().orElseThrow().apply(DEMO);
    assertThat(again.shelf().paints()).hasSize(DEMO.shelf().paints().size() + 1);
  }

  @Test
  void theSamePaintTwiceInATableIsTakenOnce() throws Exception {
    TablePlan plan = plan("name,pigments\nBlue,PB29\nblue,PB29\nBlue,PB60\n", EMPTY);
    assertThat(plan.rows())
        .extracting(TakenRow::outcome)
        .containsExactly(Outcome.NEW, Outcome.KEPT, Outcome.NEW);
  }

  @Test
  void wellsTheBoxLacksAndWellsFilledTwiceAreTold() throws Exception {
    TablePlan plan =
        lineupPlan("well,name,pigments\n1,A,PB29\n1,B,PB60\n99,C,PB29\n,D,PB29\n", DEMO, QUAY);
    assertThat(plan.rows().subList(1, 4))
        .extracting(row -> row.faults().get(0).getClass().getSimpleName())
        .containsExactly("WellTwice", "NoSuchWell", "Empty");
  }

  @Test
  void theMappingDecidesWhatIsRead() throws Exception {
    DelimitedText table = text("what,x,y\nSea,PB29,high\n");
    assertThat(ColumnMapping.guess(table.columns()).places()).isEmpty();
    ColumnMapping mapping =
        new ColumnMapping(java.util.Map.of())
            .with(TableColumn.NAME, Optional.of(0))
            .with(TableColumn.PIGMENTS, Optional.of(1))
            .with(TableColumn.STAINING, Optional.of(2));
    Paint paint =
        TableReader.toShelf(rows(table), mapping, Duplicates.KEEP_MINE, EMPTY, LIBRARY)
            .added()
            .get(0);
    assertThat(paint.handling().staining()).isEqualTo(Staining.HIGH);
    ColumnMapping without = mapping.with(TableColumn.STAINING, Optional.empty());
    assertThat(
            TableReader.toShelf(rows(table), without, Duplicates.KEEP_MINE, EMPTY, LIBRARY)
                .added()
                .get(0)
                .handling()
                .staining())
        .isEqualTo(Staining.LOW);
  }

  @Test
  void fiveThousandRowsAreTakenInOneEditAndUndoneInOne() throws Exception {
    StringBuilder text = new StringBuilder("name,pigments,note\n");
    for (int i = 0; i < 5000; i++) {
      text.append("Paint ").append(i).append(",PB29 60 % + PBk7 40 %,\"row, ").append(i);
      text.append("\"\n");
    }
    TablePlan plan = plan(text.toString(), DEMO);
    Kit filled = plan.edit().orElseThrow().apply(DEMO);
    assertThat(filled.shelf().paints()).hasSize(DEMO.shelf().paints().size() + 5000);
  }

  private static String number(double share) {
    String text = Double.toString(share);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  private static String wellId(String label) {
    return DEMO.boxOf(QUAY).wells().stream()
        .filter(well -> well.label().equals(label))
        .findFirst()
        .orElseThrow()
        .id();
  }

  private static TablePlan plan(String text, Kit kit) throws Exception {
    return plan(text, kit, Duplicates.KEEP_MINE);
  }

  private static TablePlan plan(String text, Kit kit, Duplicates duplicates) throws Exception {
    DelimitedText table = text(text);
    return TableReader.toShelf(
        rows(table), ColumnMapping.guess(table.columns()), duplicates, kit, LIBRARY);
  }

  private static TablePlan lineupPlan(String text, Kit kit, Lineup lineup) throws Exception {
    DelimitedText table = text(text);
    return TableReader.toLineup(
        rows(table),
        ColumnMapping.guess(table.columns()),
        Duplicates.KEEP_MINE,
        kit,
        lineup,
        LIBRARY);
  }

  private static DelimitedText text(String text) throws Exception {
    return DelimitedText.read(text.getBytes(StandardCharsets.UTF_8));
  }

  private static List<SourceRow> rows(DelimitedText table) {
    List<SourceRow> rows = new ArrayList<>();
    table.rows().forEach(row -> rows.add(new SourceRow(row.line(), row.cells())));
    return rows;
  }
}
