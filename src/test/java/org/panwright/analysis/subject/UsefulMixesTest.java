package org.panwright.analysis.subject;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.kit.Kit;
import org.panwright.kit.SubjectColour;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.WashStrengths;
import org.panwright.store.DemoKit;
import org.panwright.store.PigmentLibraryReader;

class UsefulMixesTest {
  private static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();
  private static final Kit DEMO = DemoKit.read(LIBRARY);
  private static final OpticsTable TABLE =
      OpticsTable.of(DEMO.shelf().paints(), LIBRARY, DEMO.paper());

  private static String id(String code) {
    return DEMO.shelf().paints().stream()
        .filter(p -> p.codes().equals(code))
        .findFirst()
        .orElseThrow()
        .id();
  }

  private static List<UsefulMix> mixes(int most, List<SubjectColour> subjects, String... codes) {
    List<String> ids = java.util.stream.Stream.of(codes).map(UsefulMixesTest::id).toList();
    return UsefulMixes.of(TABLE, ids, WashStrengths.USUAL, subjects, most, () -> false);
  }

  /** Common practice: yellow and blue make the greens, rose and blue the violets. */
  @Test
  void threePrimariesGiveGreenAndViolet() {
    List<UsefulMix> mixes = mixes(12, List.of(), "PY175", "PV19", "PB29");

    assertThat(mixes).anyMatch(mix -> isHue(mix, 110, 180)).anyMatch(mix -> isHue(mix, 280, 340));
  }

  /** Common practice: ultramarine and burnt sienna are the usual pair for greys and darks. */
  @Test
  void aNeutralPairIsAmongThem() {
    String ultramarine = id("PB29");
    String sienna =
        DEMO.shelf().paints().stream()
            .filter(p -> p.name().equals("Burnt sienna"))
            .findFirst()
            .orElseThrow()
            .id();
    List<UsefulMix> mixes =
        UsefulMixes.of(
            TABLE,
            List.of(id("PY175"), ultramarine, sienna),
            WashStrengths.USUAL,
            List.of(),
            12,
            () -> false);

    assertThat(mixes)
        .anySatisfy(
            mix -> {
              assertThat(mix.lab().chroma()).isLessThan(8);
              assertThat(mix.recipe().portions())
                  .extracting(p -> p.paintId())
                  .containsExactlyInAnyOrder(ultramarine, sienna);
            });
  }

  @Test
  void aSubjectWithinReachComesFirstUnderItsName() {
    Lab green =
        new Mixer(TABLE)
            .lab(
                org.panwright.mixing.Recipe.of(id("PY175"), 2, id("PB29"), 1),
                WashStrengths.USUAL.load(org.panwright.paint.Wash.MILK));

    List<UsefulMix> mixes =
        mixes(
            4,
            List.of(
                new SubjectColour("meadow", green),
                new SubjectColour("neon sign", new Lab(60, 95, -60))),
            "PY175",
            "PV19",
            "PB29");

    assertThat(mixes.get(0).subject()).isEqualTo(Optional.of("meadow"));
    assertThat(mixes).extracting(UsefulMix::subject).doesNotContain(Optional.of("neon sign"));
    assertThat(mixes).hasSizeLessThanOrEqualTo(4);
  }

  @Test
  void noneStandsThereTwiceAndAllAreOfTheLineup() {
    List<UsefulMix> mixes = mixes(12, List.of(), "PY175", "PV19", "PB29", "PY43", "PB35");

    assertThat(new HashSet<>(mixes)).hasSameSizeAs(mixes);
    assertThat(mixes)
        .flatExtracting(mix -> mix.recipe().portions())
        .extracting(portion -> portion.paintId())
        .isSubsetOf(id("PY175"), id("PV19"), id("PB29"), id("PY43"), id("PB35"));
  }

  @Test
  void onePaintOrNoneHasNoMixes() {
    assertThat(mixes(12, List.of())).isEmpty();
    assertThat(mixes(12, List.of(), "PB29")).isEmpty();
  }

  @Test
  void itStopsWhenToldTo() {
    assertThatThrownBy(
            () ->
                UsefulMixes.of(
                    TABLE,
                    List.of(id("PY175"), id("PB29")),
                    WashStrengths.USUAL,
                    List.of(),
                    12,
                    () -> true))
        .isInstanceOf(CancellationException.class);
  }

  private static boolean isHue(UsefulMix mix, double fromDeg, double toDeg) {
    double hue = Oklab.ofD65(mix.lab().toXyz(Light.D65.white())).toOklch().hueDeg();
    return hue >= fromDeg && hue <= toDeg;
  }
}
