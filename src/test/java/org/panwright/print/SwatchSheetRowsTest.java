package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.paint.Granulation;
import org.panwright.paint.Handling;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Shelf;
import org.panwright.paint.Staining;
import org.panwright.paint.Transparency;
import org.panwright.swatch.sheet.SheetFormat;
import org.panwright.words.SwatchSheetWords;

/** Which paints a swatch sheet has rows for, and what it says of the white and the black. */
class SwatchSheetRowsTest {
  private static final Paint BLUE = paint("blue", "PB29", Ownership.OWNED);
  private static final Paint DOT = paint("dot", "PR122", Ownership.TRIED);
  private static final Paint WISHED = paint("wished", "PY35", Ownership.WISHED);
  private static final Paint WISHED_WHITE = paint("wished white", "PW4", Ownership.WISHED);
  private static final Paint WHITE = paint("white", "PW6", Ownership.OWNED);
  private static final Paint BLACK = paint("black", "PBk7", Ownership.OWNED);

  @Test
  void whatIsOnlyWishedForHasNoRow() {
    Shelf shelf = new Shelf(List.of(BLUE, WISHED_WHITE, WISHED, DOT, BLACK, WHITE));

    assertThat(SwatchSheet.rows(shelf, shelf.paints())).containsExactly(WHITE, BLACK, BLUE, DOT);
    assertThat(SwatchSheet.wished(shelf.paints())).isEqualTo(2);
    assertThat(SwatchSheetWords.wished(2)).startsWith("2 wished paints are left out");
  }

  @Test
  void aWhiteThatIsOnlyWishedForIsNotStirredIn() {
    assertThat(SwatchSheet.first(new Shelf(List.of(WISHED_WHITE)), "PW")).isEmpty();
  }

  @ParameterizedTest(name = "white {0}, black {1}")
  @CsvSource({
    "true, true, white and black in rows of their own",
    "true, false, Any black of PBk7 will do",
    "false, true, Any white of PW6 will do",
    "false, false, any white of PW6 and black of PBk7 will do"
  })
  void theSheetSaysWhatToMixWith(boolean white, boolean black, String told) {
    List<Paint> paints =
        Stream.of(BLUE, white ? WHITE : DOT, black ? BLACK : DOT).distinct().toList();

    String said =
        SwatchSheet.of("kit", paints, SheetFormat.A4).sheets().get(0).singleMarks().stream()
            .filter(Mark.Text.class::isInstance)
            .map(mark -> ((Mark.Text) mark).text())
            .collect(Collectors.joining(" "));

    assertThat(said).contains(told);
  }

  private static Paint paint(String id, String pigment, Ownership ownership) {
    return new Paint(
        id,
        id,
        "",
        List.of(new PigmentShare(PigmentName.of(pigment), 1)),
        new Handling(Transparency.TRANSPARENT, Staining.LOW, Granulation.NONE, Lightfastness.I),
        ownership,
        Optional.empty(),
        "");
  }
}
