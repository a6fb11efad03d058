package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.panwright.colour.Lab;
import org.panwright.colour.Srgb;
import org.panwright.kit.Box;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.kit.SubjectColour;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.paint.Paint;

/** What holds of every kind of paper, for lineups of all sizes and names of all kinds. */
class AllPapersTest {
  private static final String[] LONG = {
    "quinacridone burnt orange of the second grinding",
    "terre d'ombre brûlée, très foncée",
    "μπλε του κοβαλτίου με λίγο βιολετί",
    "Grünspan-Nachstellung aus phthalocyaningrün",
    "żółcień neapolitańska jaśniejsza",
  };

  record Case(String name, Kit kit) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Case> lineups() {
    return Stream.of(
        new Case("one paint", CardKits.kit(CardKits.rows(1, 1, 40, 40))),
        new Case("six", CardKits.kit(CardKits.rows(1, 6, 104, 45))),
        new Case("sixteen, two empty", CardKits.kit(CardKits.rows(2, 8, 136, 66), "w3", "w9")),
        new Case("twelve with an outing and a second lineup", full()),
        new Case("48 with names in many letters", longNames(CardKits.rows(4, 12, 200, 130), 48)),
        new Case("120 with names in many letters", longNames(CardKits.rows(8, 15, 250, 260), 120)),
        new Case("dabs only", CardKits.kit(dabs())),
        new Case("no paint", CardKits.kit(CardKits.rows(1, 6, 104, 45), List.of(), "bare")));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("lineups")
  void nothingLiesOffThePageOrOnAnother(Case lineup) {
    for (PaperFormat format : List.of(PaperFormat.A4, PaperFormat.A5, PaperFormat.TABLOID)) {
      for (PaperOrder order : PaperKind.allOn(format)) {
        made(order, lineup.kit()).papers().ifPresent(SheetChecks::check);
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("lineups")
  void everyPaperOfALineupIsMadeOrSaysWhyNot(Case lineup) {
    for (PaperOrder order : PaperKind.allOn(PaperFormat.A4)) {
      Made made = made(order, lineup.kit());

      assertThat(made.papers().isPresent() || made.notes().get(0).endsWith("."))
          .as(order.kind().name())
          .isTrue();
      assertThat(order.withPaper(PaperFormat.A5).paper()).isEqualTo(PaperFormat.A5);
      assertThat(order.kind().usual()).isEqualTo(order);
    }
  }

  @Test
  void aLineupWithoutPansGetsNoLabelsButAReason() {
    Made made = made(LabelOptions.USUAL, CardKits.kit(dabs()));

    assertThat(made.papers()).isEmpty();
    assertThat(made.notes())
        .containsExactly(
            "The lineup fills no pan, and dabs get no labels. Put a paint into a pan or half pan"
                + " first.");
  }

  /** A5 measures 148 mm across, 16 mm are margins and 34 mm the names. */
  @Test
  void aPaperSmallerThanOneCellIsRefusedWithTheLargest() {
    ChartOptions huge = ChartOptions.USUAL.withCellMm(OptionalDouble.of(150));

    Made made = made(huge.withPaper(PaperFormat.A5), CardKits.kit(CardKits.rows(1, 6, 104, 45)));
    assertThat(made.papers()).isEmpty();
    assertThat(made.notes().get(0))
        .startsWith("A cell of 150 mm does not go on A5")
        .contains("98 mm");
    assertThat(
            made(huge.withPaper(PaperFormat.A3), CardKits.kit(CardKits.rows(1, 6, 104, 45)))
                .papers())
        .isPresent();
  }

  @Test
  void namesTheFontsLackAreTold() {
    Paint emoji = CardKits.paint("p0", "blue \uD83C\uDFA8", "PB29");
    Kit kit = CardKits.kit(CardKits.rows(1, 1, 104, 45), List.of(emoji), "كوبالت");

    for (PaperOrder order : PaperKind.allOn(PaperFormat.A4)) {
      Made made = made(order, kit);
      if (made.papers().isEmpty()) {
        continue;
      }
      assertThat(made.notes())
          .as(order.kind().name())
          .anySatisfy(
              note -> assertThat(note).contains("cannot be printed", "كوبالت", "\uD83C\uDFA8"));
    }
    assertThat(made(LadderOptions.USUAL, CardKits.kit(CardKits.rows(1, 6, 104, 45))).notes())
        .isEmpty();
  }

  /** Text is black on white; on a swatch it differs from it by more than 40 in L*, in grey too. */
  @ParameterizedTest
  @EnumSource(PaperKind.class)
  void everyTextIsLegibleWithoutColour(PaperKind kind) {
    Made made = made(kind.usual(), full());

    for (Sheet sheet : made.papers().orElseThrow().inGrey().sheets()) {
      List<Mark> marks = sheet.singleMarks();
      for (Mark mark : marks) {
        assertThat(colours(mark)).allMatch(c -> c.red() == c.green() && c.green() == c.blue());
        if (mark instanceof Mark.Text text) {
          for (Srgb ground : grounds(text, marks)) {
            assertThat(Math.abs(lightness(text.ink()) - lightness(ground)))
                .as(text.text())
                .isGreaterThan(40);
          }
        }
      }
    }
  }

  @Test
  void everythingOnAnOccasionMakesTheSameBytesAgain() {
    assertThat(everything(full()).parts()).hasSize(PaperKind.values().length);
    assertThat(PdfWriter.write(everything(full()))).isEqualTo(PdfWriter.write(everything(full())));
  }

  private static Bundle everything(Kit kit) {
    return new Bundle(
        "all",
        PaperKind.allOn(PaperFormat.A4).stream()
            .flatMap(order -> made(order, kit).papers().stream())
            .toList());
  }

  private static Stream<Srgb> colours(Mark mark) {
    if (mark instanceof Mark.Text text) {
      return Stream.of(text.ink());
    }
    if (mark instanceof Mark.Swatch swatch) {
      return swatch.run().stream();
    }
    return mark instanceof Mark.Rectangle rectangle
        ? Stream.concat(Stream.of(rectangle.ink()), rectangle.fill().stream())
        : Stream.of(((Mark.Line) mark).ink());
  }

  /** The colours right beneath a text: of the swatch it stands on, or of the paper. */
  private static List<Srgb> grounds(Mark.Text text, List<Mark> marks) {
    List<Srgb> grounds = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark instanceof Mark.Swatch swatch
          && swatch.area().contains(text.bounds(), 0.02)
          && !swatch.run().isEmpty()) {
        int last = swatch.run().size() - 1;
        double width = swatch.area().widthMm();
        double from = (text.bounds().xMm() - swatch.area().xMm()) / width;
        double to = (text.bounds().rightMm() - swatch.area().xMm()) / width;
        for (int i = (int) (from * last); i <= Math.ceil(to * last) && i <= last; i++) {
          grounds.add(swatch.run().get(i));
        }
      }
    }
    return grounds.isEmpty() ? List.of(Ink.WHITE) : grounds;
  }

  /** CIE 15: L* = 116 Y^(1/3) − 16 for Y above 0.008856. */
  private static double lightness(Srgb colour) {
    return 116 * Math.cbrt(colour.toXyzD65().y()) - 16;
  }

  /** A kit with something for every kind of paper. */
  private static Kit full() {
    Kit one = CardKits.kit(CardKits.rows(2, 6, 124, 66));
    Lineup first = one.lineups().get(0);
    Map<String, Filling> fewer = new LinkedHashMap<>(first.fillings());
    fewer.keySet().removeAll(List.of("w1", "w7"));
    return one.withLineups(
            List.of(first, new Lineup("second", "Ebb, without yellow", first.boxId(), fewer)))
        .withOutings(
            List.of(
                new Outing(
                    "o",
                    "Estuary with Zoë",
                    Optional.of(CardKits.DATE),
                    "Ομίχλη, north bank",
                    Optional.of(CardKits.LINEUP),
                    4,
                    3,
                    List.of(new SubjectColour("wet sand", new Lab(62, 4, 14))))));
  }

  private static Made made(PaperOrder order, Kit kit) {
    return Made.of(
        order,
        new Occasion(kit, CardKits.LINEUP, Optional.empty(), CardKits.LIBRARY, CardKits.DATE));
  }

  private static Kit longNames(Box box, int count) {
    List<Paint> paints = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      paints.add(
          CardKits.paint("p" + i, LONG[i % LONG.length] + " " + i, "PB29", "PY150", "PR101"));
    }
    return CardKits.kit(box, paints, "Ομίχλη στο ποτάμι, früh am Morgen, à marée basse");
  }

  private static Box dabs() {
    List<Well> wells = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      wells.add(new Well("d" + i, "d" + (i + 1), WellKind.DAB, 4 + 15 * i, 4, 12, 10));
    }
    return new Box("box", "strip of dabs", 130, 20, 130, 60, wells);
  }
}
