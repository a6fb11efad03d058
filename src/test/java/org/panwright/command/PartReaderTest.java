package org.panwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.panwright.kit.Kit;
import org.panwright.paint.Paint;
import org.panwright.paint.Shelf;
import org.panwright.store.DemoKit;

class PartReaderTest {
  private final PartReader pigments = new PartReader(Console.LIBRARY, Optional.empty());

  @ParameterizedTest(name = "{0} is {2} parts of {1}")
  @CsvSource({
    "PB29, PB29, 1",
    "PB29:2, PB29, 2",
    "PB15:3, PB15:3, 1",
    "PB15:3:2, PB15:3, 2",
    "PB15:3:0.5, PB15:3, 0.5",
    "'PB15:3:0,5', PB15:3, 0.5",
    "pb29:3, PB29, 3",
    "pbk7, PBk7, 1",
    "PBr7 burnt sienna:4, PBr7 burnt sienna, 4",
  })
  void longestKnownNameWins(String word, String name, double parts) throws BadUseException {
    Part part = pigments.readAll(List.of(word)).get(0);

    assertThat(part.name()).isEqualTo(name);
    assertThat(part.parts()).isEqualTo(parts);
  }

  @Test
  void codeWithoutKindMeansItsFirstKind() throws BadUseException {
    assertThat(pigments.readAll(List.of("PBr7")).get(0).name()).startsWith("PBr7");
  }

  @Test
  void samePaintTwiceIsAllItsParts() throws BadUseException {
    List<Part> parts = pigments.readAll(List.of("PB29:2", "PY154", "pb29:3"));

    assertThat(parts.stream().map(Part::name)).containsExactly("PB29", "PY154");
    assertThat(parts.get(0).parts()).isEqualTo(5);
  }

  @Test
  void paintsOfAKitAreFoundByNameAndBeforePigments() throws BadUseException {
    Paint known = DemoKit.read(Console.LIBRARY).shelf().paints().get(0);
    Paint colon = known.withId("colon").withName("Mix: dawn 3:1");
    Paint namesake = known.withId("namesake").withName("PB29");
    Kit more = Kit.empty("more").withShelf(new Shelf(List.of(known, colon, namesake)));
    PartReader reader = new PartReader(Console.LIBRARY, Optional.of(more));

    List<Part> parts = reader.readAll(List.of(known.name().toUpperCase(Locale.ROOT) + ":2"));
    assertThat(parts.get(0).name()).isEqualTo(known.name());
    assertThat(parts.get(0).parts()).isEqualTo(2);
    assertThat(reader.readAll(List.of("Mix: dawn 3:1")).get(0).parts()).isEqualTo(1);
    assertThat(reader.readAll(List.of("Mix: dawn 3:1:4")).get(0).parts()).isEqualTo(4);
    assertThat(reader.readAll(List.of("PB29")).get(0).optics())
        .isEqualTo(namesake.optics(Console.LIBRARY));
    assertThat(reader.readAll(List.of("PY154")).get(0).name()).isEqualTo("PY154");
  }

  @ParameterizedTest
  @CsvSource({"''", "':2'", "PB", "PB29:2:2", "PB29:1e3", "PB29:NaN", "PB29:9999999"})
  void whatIsNoPartIsRefusedWithItsName(String word) {
    assertThatThrownBy(() -> pigments.readAll(List.of(word))).isInstanceOf(BadUseException.class);
  }
}
