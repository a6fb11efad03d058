package org.panwright.analysis.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.panwright.analysis.Lineups;
import org.panwright.analysis.balance.Looks;
import org.panwright.analysis.finding.DriesGrey;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.FindingKind;
import org.panwright.analysis.finding.Metals;
import org.panwright.analysis.finding.MuddyPaint;
import org.panwright.analysis.finding.MuddyPairs;
import org.panwright.analysis.finding.Nature;
import org.panwright.analysis.finding.Wish;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;

/** Every remedy against judging the lineup as it would be, by a judge who knows nothing of it. */
class RemediesTest {
  private static final int SEEDS = 12;

  /** PR108 is a cadmium, PR255 a clear red of nearly its colour without (common practice). */
  @Test
  void theCadmiumGivesWayToTheNearestWithoutMetal() {
    List<Paint> shelf = Lineups.paints("PR108", "PB29", "PY154", "PR255", "PV19", "PG7");
    Kit kit = Lineups.kit(shelf, 3, "PR108", "PB29", "PY154");
    Metals metals = only(Metals.class, Lineups.judge(kit));
    assertThat(metals.cure()).contains(new Edit.PlacePaint(Lineups.ID, "w0", "PR255"));
    assertThat(metals.remedy().orElseThrow().left()).isZero();
    assertThat(Lineups.judge(metals.cure().orElseThrow().apply(kit)).findings())
        .noneMatch(Metals.class::isInstance);
  }

  /** Nothing on the shelf is red: nothing takes the cadmium's place. */
  @Test
  void aCadmiumThatNothingIsNearStays() {
    Kit kit = Lineups.kit(Lineups.paints("PR108", "PB29", "PG7", "PB15:3"), 2, "PR108", "PB29");
    assertThat(only(Metals.class, Lineups.judge(kit)).cure()).isEmpty();
  }

  /** A paint in two wells stays in the lineup whatever takes one of them. */
  @Test
  void aPaintInTwoWellsIsNotCuredByOneEdit() {
    List<Paint> shelf = Lineups.paints("PR108", "PB29", "PY154", "PR255");
    Kit kit = Lineups.kit(shelf, 4, "PR108", "PB29", "PY154", "PR108");
    assertThat(only(Metals.class, Lineups.judge(kit)).cure()).isEmpty();
  }

  @Test
  void aWishedPaintCanBeTriedInTheBox() {
    List<Paint> shelf = new ArrayList<>(Lineups.paints("PY154", "PB15:3"));
    shelf.add(Lineups.paint("PR122", Ownership.WISHED));
    Kit kit = Lineups.kit(shelf, 3, "PY154", "PB15:3");
    Wish wish = only(Wish.class, Lineups.judge(kit));
    assertThat(wish.cure()).contains(new Edit.PlacePaint(Lineups.ID, "w2", "PR122"));
    assertThat(Lineups.judge(wish.cure().orElseThrow().apply(kit)).findings())
        .noneMatch(Wish.class::isInstance);
  }

  static IntStream seeds() {
    return IntStream.range(0, SEEDS);
  }

  /** The finding goes or lessens as promised, nothing grows worse, and no metal is new. */
  @ParameterizedTest
  @MethodSource("seeds")
  void everyRemedyKeepsItsPromise(int seed) {
    Kit kit = drawn(seed, 18, 10);
    Judgement before = Lineups.judge(kit);
    for (Finding finding : before.findings()) {
      if (remedied(finding)) {
        Edit edit = finding.cure().orElseThrow();
        Judgement after = Lineups.judge(edit.apply(kit));
        double left = left(finding, after.findings());
        assertThat(left).isCloseTo(promised(finding), within(1e-6));
        assertThat(left).isLessThan(finding.extent());
        assertThat(isWorse(before, after)).as("%s for %s", edit, finding).isFalse();
      }
    }
  }

  /** Where no remedy is told every exchange with the shelf falls short, by trying all. */
  @ParameterizedTest
  @MethodSource("seeds")
  void whereNoneIsToldNoneIsThere(int seed) {
    Kit kit = drawn(100 + seed, 9, 6);
    Judgement before = Lineups.judge(kit);
    for (Finding finding : before.findings()) {
      if (finding instanceof MuddyPairs pairs && pairs.remedy().isEmpty()) {
        for (Edit edit : exchanges(kit, before)) {
          Judgement after = Lineups.judge(edit.apply(kit));
          boolean cleaner = left(finding, after.findings()) <= 0.75 * pairs.lost();
          assertThat(cleaner && !isWorse(before, after) && loss(before, after) < 0.05)
              .as("%s for %s", edit, finding)
              .isFalse();
        }
      }
    }
  }

  private static boolean remedied(Finding finding) {
    boolean ours =
        finding instanceof MuddyPaint
            || finding instanceof MuddyPairs
            || finding instanceof DriesGrey
            || finding instanceof Metals
            || finding instanceof Nature;
    return ours && finding.cure().isPresent();
  }

  private static double promised(Finding finding) {
    if (finding instanceof MuddyPairs pairs) {
      return pairs.remedy().orElseThrow().left();
    } else if (finding instanceof DriesGrey grey) {
      return grey.remedy().orElseThrow().left();
    } else if (finding instanceof Metals metals) {
      return metals.remedy().orElseThrow().left();
    } else if (finding instanceof Nature nature) {
      return nature.remedy().orElseThrow().left();
    }
    return 0;
  }

  private static double left(Finding finding, List<Finding> after) {
    return after.stream()
        .filter(other -> kind(other).equals(kind(finding)))
        .filter(
            other ->
                !(finding instanceof MuddyPaint muddy)
                    || List.of(muddy.paintId(), muddy.insteadPaintId().orElseThrow())
                        .contains(other.about()))
        .mapToDouble(Finding::extent)
        .sum();
  }

  private static String kind(Finding finding) {
    return finding instanceof Nature nature
        ? finding.kind() + nature.effect().name()
        : finding.kind().name();
  }

  private static boolean isWorse(Judgement before, Judgement after) {
    Map<String, Double> grown = new HashMap<>();
    after.findings().forEach(f -> grown.merge(kind(f), f.severity(), Double::sum));
    before.findings().forEach(f -> grown.merge(kind(f), -f.severity(), Double::sum));
    for (FindingKind spare :
        List.of(FindingKind.STAND_IN, FindingKind.PASSENGER, FindingKind.ALSO_SPARE)) {
      grown.remove(spare.name());
    }
    boolean newMetal = metals(after).stream().anyMatch(metal -> !metals(before).contains(metal));
    return newMetal || grown.values().stream().anyMatch(growth -> growth > 0.04 + 1e-9);
  }

  private static List<String> metals(Judgement judgement) {
    return judgement.findings().stream()
        .filter(Metals.class::isInstance)
        .flatMap(finding -> ((Metals) finding).holders().keySet().stream())
        .toList();
  }

  private static double loss(Judgement before, Judgement after) {
    return Math.max(0, 1 - after.ring().sum() / before.ring().sum())
        + Math.max(0, 1 - (double) after.reach().size() / before.reach().size());
  }

  /** Each paint at hand in the place of each of the lineup's that is of nearly its hue. */
  private static List<Edit> exchanges(Kit kit, Judgement judgement) {
    List<String> box = kit.lineups().get(0).paintIds(kit.boxes().get(0));
    Looks looks = new Looks(judgement.table(), kit.washes());
    List<Edit> edits = new ArrayList<>();
    for (int well = 0; well < box.size(); well++) {
      for (Paint paint : kit.shelf().paints()) {
        if (!box.contains(paint.id()) && looks.sameHue(box.get(well), paint.id())) {
          edits.add(new Edit.PlacePaint(Lineups.ID, "w" + well, paint.id()));
        }
      }
    }
    return edits;
  }

  private static Kit drawn(int seed, int shelf, int box) {
    List<String> codes =
        new ArrayList<>(
            Lineups.LIBRARY.pigments().stream().map(p -> p.name().code()).distinct().toList());
    Collections.shuffle(codes, new Random(seed));
    List<String> drawn = codes.subList(0, shelf);
    return Lineups.kit(
        Lineups.paints(drawn.toArray(new String[0])),
        box,
        drawn.subList(0, box).toArray(new String[0]));
  }

  private static <F extends Finding> F only(Class<F> kind, Judgement judgement) {
    Optional<F> found =
        judgement.findings().stream().filter(kind::isInstance).map(kind::cast).findFirst();
    return found.orElseThrow(() -> new AssertionError("no " + kind));
  }
}
