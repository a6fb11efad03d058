package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.panwright.kit.Box;
import org.panwright.kit.Kit;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.paint.Paint;
import org.panwright.words.CardWords;

class KeyCardTest {
  private static final String LONG = "a name far too long for the well of a half pan";
  private static final CardOptions USUAL = CardOptions.USUAL;

  @Test
  void lidCardSaysEverythingOfTwelvePaints() {
    KeyCard card = CardKits.card(CardKits.kit(CardKits.rows(2, 6, 124, 66), "w11"), USUAL);

    assertThat(card.notes()).isEmpty();
    assertThat(card.papers().sheets()).hasSize(1);
    assertThat(texts(card))
        .contains(
            "Estuary, low water",
            "tin of 12 half pans · 25 November 2026",
            "lemon yellow",
            "PB15:3",
            "half",
            CardWords.EMPTY_WELL,
            CardWords.THIS_EDGE_TO_HINGE,
            CardWords.PRINT_AT_FULL_SIZE)
        .anyMatch(text -> text.startsWith("Colours are predicted"))
        .anyMatch(text -> text.startsWith("Metals aboard by well: cadmium (12)"));
  }

  @ParameterizedTest(name = "{0}")
  @EnumSource(CardFormat.class)
  void everyFormatIsWhollyLegible(CardFormat format) {
    for (Kit kit :
        List.of(
            CardKits.kit(CardKits.twelveWithDabs(), "w11"),
            CardKits.kit(CardKits.rows(1, 6, 104, 60)),
            CardKits.kit(CardKits.rows(3, 8, 134, 96)))) {
      for (CardOptions.Fields fields : CardOptions.Fields.values()) {
        SheetChecks.check(CardKits.card(kit, USUAL.withFormat(format).withFields(fields)).papers());
      }
    }
  }

  @ParameterizedTest(name = "lid of {0} x {1} mm")
  @CsvSource({"300,200", "90,50", "70,40", "50,50", "40,25", "30,110", "20,20", "10,10"})
  void everyLidIsMetSomehow(double widthMm, double heightMm) {
    KeyCard card = CardKits.card(CardKits.kit(CardKits.rows(2, 6, widthMm, heightMm)), USUAL);

    SheetChecks.check(card.papers());
    assertThat(texts(card)).contains("lemon yellow", "PB29");
  }

  @Test
  void smallLidContinuesOnAListAndSaysSo() {
    KeyCard card = CardKits.card(CardKits.kit(CardKits.rows(2, 6, 70, 40)), USUAL);

    assertThat(card.notes()).contains(CardWords.CONTINUES_ON_LIST);
    assertThat(texts(card)).contains(CardWords.SEE_LIST, "Estuary, low water: list");
  }

  /** Front and list go on one sheet; at the height of the lid the end of the list took another. */
  @Test
  void listGrowsTallerWhereThatSparesASheet() {
    for (double lidHeightMm = 70; lidHeightMm <= 90; lidHeightMm += 5) {
      KeyCard card = CardKits.card(CardKits.kit(CardKits.rows(3, 8, 144, lidHeightMm)), USUAL);

      assertThat(card.papers().sheets()).as("lid of %s mm", lidHeightMm).hasSize(1);
      SheetChecks.check(card.papers());
    }
  }

  @Test
  void lidTooSmallForNumbersGetsALargerCardAndSaysSo() {
    KeyCard card = CardKits.card(CardKits.kit(CardKits.rows(2, 6, 10, 10)), USUAL);

    assertThat(card.notes()).contains(CardWords.LID_TOO_SMALL);
  }

  @Test
  void lidLargerThanThePaperIsClippedAndSaysSo() {
    KeyCard card = CardKits.card(CardKits.kit(CardKits.rows(2, 6, 900, 600)), USUAL);

    assertThat(card.notes()).contains(CardWords.LARGER_THAN_PAPER);
    SheetChecks.check(card.papers());
  }

  @Test
  void cutMarksAreAsFarApartAsTheLidLessItsPlay() {
    KeyCard card = CardKits.card(CardKits.kit(CardKits.rows(2, 6, 124, 66)), USUAL);

    List<Double> xs = new ArrayList<>();
    List<Double> ys = new ArrayList<>();
    for (Mark.Line line : lines(card.papers().sheets().get(0))) {
      if (line.strokeMm() == 0.15) {
        if (line.fromXMm() == line.toXMm()) {
          xs.add(line.fromXMm());
        } else {
          ys.add(line.fromYMm());
        }
      }
    }
    xs.sort(null);
    ys.sort(null);
    assertThat(xs.get(xs.size() - 1) - xs.get(0)).isEqualTo(123, within());
    assertThat(ys.get(ys.size() - 1) - ys.get(0)).isEqualTo(65, within());
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(1e-9);
  }

  @Test
  void copiesShareSheets() {
    Kit kit = CardKits.kit(CardKits.rows(1, 6, 90, 60));
    KeyCard card = CardKits.card(kit, USUAL.withCopies(6));

    assertThat(card.papers().sheets()).hasSize(1);
    assertThat(texts(card)).filteredOn("lemon yellow"::equals).hasSize(6);
    SheetChecks.check(card.papers());
  }

  @Test
  void fieldsToPaintHoldNoColour() {
    KeyCard card =
        CardKits.card(
            CardKits.kit(CardKits.rows(2, 6, 124, 66)),
            USUAL.withFields(CardOptions.Fields.TO_PAINT));

    assertThat(card.papers().sheets().get(0).singleMarks())
        .noneMatch(Mark.Swatch.class::isInstance);
    assertThat(texts(card)).anyMatch(text -> text.startsWith("Paint the fields by hand"));
  }

  @Test
  void wellsKeepTheirArrangement() {
    Box box = CardKits.rows(2, 6, 124, 66);
    KeyCard card = CardKits.card(CardKits.kit(box), USUAL);

    Mark.Text first = text(card, "1");
    Mark.Text second = text(card, "2");
    Mark.Text seventh = text(card, "7");
    assertThat(second.baselineMm()).isEqualTo(first.baselineMm(), within());
    assertThat(second.xMm()).isGreaterThan(first.xMm());
    assertThat(seventh.xMm()).isEqualTo(first.xMm(), within());
    assertThat(seventh.baselineMm()).isGreaterThan(first.baselineMm());
  }

  @Test
  void anEmptyLineupIsACardOfEmptyWells() {
    KeyCard card =
        CardKits.card(CardKits.kit(CardKits.rows(1, 6, 104, 60), List.of(), "bare"), USUAL);

    SheetChecks.check(card.papers());
    assertThat(texts(card)).filteredOn(CardWords.EMPTY_WELL::equals).hasSize(6);
  }

  @Test
  void anUnknownLineupIsRefused() {
    Kit kit = CardKits.kit(CardKits.rows(1, 6, 104, 60));

    assertThatThrownBy(() -> KeyCard.of(kit, "nowhere", CardKits.LIBRARY, USUAL, CardKits.DATE))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the kit has no lineup nowhere");
  }

  /** Codes and the beginning of a name say more of a black pan than its number. */
  @Test
  void aWellWhoseNameIsTooLongStillSaysItsCodes() {
    Box box = CardKits.rows(2, 3, 118, 66);
    List<Paint> paints = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      paints.add(CardKits.paint("p" + i, LONG, i == 2 ? "PY42" : "PB29"));
    }
    KeyCard card =
        CardKits.card(CardKits.kit(box, paints, "long names"), USUAL.withFormat(CardFormat.LID));
    assertThat(
            card.papers().sheets().stream()
                .flatMap(sheet -> sheet.singleMarks().stream())
                .filter(mark -> mark instanceof Mark.Text text && text.text().equals("PY42")))
        .as("in its well and on the list")
        .hasSize(2);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void nastyNamesNeverCollideNorLeaveThePage(long seed) {
    Random random = new Random(seed);
    Box box = randomBox(random);
    List<Paint> paints = new ArrayList<>();
    for (int i = 0; i < box.wells().size(); i++) {
      String[] codes = {"PB29", "PY150", "PBr24", "PR101", "PV23"};
      String[] some = new String[1 + random.nextInt(codes.length)];
      System.arraycopy(codes, 0, some, 0, some.length);
      paints.add(CardKits.paint("p" + i, nasty(random), some));
    }
    CardFormat[] formats = CardFormat.values();
    PaperFormat[] papers = PaperFormat.values();
    CardOptions options =
        USUAL
            .withFormat(formats[random.nextInt(formats.length)])
            .withPaper(papers[random.nextInt(papers.length)])
            .withList(random.nextBoolean())
            .withCopies(1 + random.nextInt(3));

    KeyCard card = CardKits.card(CardKits.kit(box, paints, nasty(random)), options);

    SheetChecks.check(card.papers());
    assertThat(PdfWriter.write(card.papers())).isNotEmpty();
  }

  /** Wells on a random grid with random gaps, some missing. */
  private static Box randomBox(Random random) {
    int columns = 1 + random.nextInt(8);
    int rows = 1 + random.nextInt(4);
    double width = 6 + random.nextInt(26);
    double height = 6 + random.nextInt(26);
    double gap = random.nextInt(3) * random.nextDouble() * 8;
    List<Well> wells = new ArrayList<>();
    for (int i = 0; i < rows * columns; i++) {
      if (i == 0 || random.nextInt(8) > 0) {
        WellKind kind = WellKind.values()[random.nextInt(3)];
        double x = 2 + (i % columns) * (width + gap);
        int row = i / columns;
        double y = 2 + row * (height + gap);
        String label = random.nextInt(10) == 0 ? nasty(random) : String.valueOf(i + 1);
        wells.add(new Well("w" + i, label, kind, x, y, width, height));
      }
    }
    return new Box(
        "box",
        nasty(random),
        10 + columns * (width + gap),
        10 + rows * (height + gap),
        20 + random.nextInt(200),
        20 + random.nextInt(150),
        wells);
  }

  private static String nasty(Random random) {
    String[] pieces = {
      "ultramarine ",
      "Ölgrün",
      "É",
      "βασιλικό μπλε ",
      "\uD83C\uDFA8",
      "\uD83D\uDC69\u200D\uD83C\uDFA8 ",
      "כחול ים (עמוק) ",
      "أزرق ",
      "群青",
      "\n",
      "quinacridonequinacridonequinacridone",
      "ﬃ",
      "e\u0301\u0323",
      "\u202E",
      "%",
      "  "
    };
    StringBuilder name = new StringBuilder("x");
    int length = random.nextInt(4) == 0 ? 300 : 1 + random.nextInt(40);
    while (name.length() < length) {
      name.append(pieces[random.nextInt(pieces.length)]);
    }
    return name.toString();
  }

  private static Mark.Text text(KeyCard card, String wanted) {
    return card.papers().sheets().get(0).singleMarks().stream()
        .filter(Mark.Text.class::isInstance)
        .map(Mark.Text.class::cast)
        .filter(text -> text.text().equals(wanted) && text.face() == Typeface.BOLD)
        .findFirst()
        .orElseThrow();
  }

  private static List<String> texts(KeyCard card) {
    return card.papers().sheets().stream()
        .flatMap(sheet -> sheet.singleMarks().stream())
        .filter(Mark.Text.class::isInstance)
        .map(mark -> ((Mark.Text) mark).text())
        .toList();
  }

  private static List<Mark.Line> lines(Sheet sheet) {
    return sheet.singleMarks().stream()
        .filter(Mark.Line.class::isInstance)
        .map(Mark.Line.class::cast)
        .toList();
  }
}
