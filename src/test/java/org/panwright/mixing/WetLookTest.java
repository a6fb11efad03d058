package org.panwright.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;
import org.panwright.paint.DryingShift;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Paper;

class WetLookTest {
  private static final Offset<Double> TINY = within(1e-9);
  private static final Mixer MIXER =
      new Mixer(OpticsTable.of(List.of("grey", "dark"), List.of(flat(1), flat(4)), Paper.WHITE));

  @Test
  void withoutReadingsTheRuleHolds() {
    Lab rule = Light.D65.lab(MIXER.wet(Recipe.of("grey"), 1));
    assertThat(new WetLook(MIXER, id -> Optional.empty()).lab(Recipe.of("grey"), 1))
        .isEqualTo(rule);
  }

  @Test
  void aReadShiftIsAddedWhole() {
    Lab dry = MIXER.lab(Recipe.of("grey"), 1);
    DryingShift shift = new DryingShift(-6, 2, -4, dry.l());
    Lab wet = new WetLook(MIXER, id -> Optional.of(shift)).lab(Recipe.of("grey"), 1);
    assertThat(wet.l()).isCloseTo(dry.l() - 6, TINY);
    assertThat(wet.a()).isCloseTo(dry.a() + 2, TINY);
    assertThat(wet.b()).isCloseTo(dry.b() - 4, TINY);
  }

  @Test
  void aFaintWashHasLittleOfIt() {
    DryingShift shift = new DryingShift(-6, 2, -4, MIXER.lab(Recipe.of("grey"), 1).l());
    WetLook look = new WetLook(MIXER, id -> Optional.of(shift));
    Lab dry = MIXER.lab(Recipe.of("grey"), 0.01);
    assertThat(look.lab(Recipe.of("grey"), 0.01).l()).isCloseTo(dry.l(), within(0.5));
  }

  @Test
  void aMixTakesOfEachByVolume() {
    Recipe recipe = Recipe.of("grey", 1, "dark", 1);
    DryingShift shift = new DryingShift(-8, 0, 0, 95);
    WetLook one = new WetLook(MIXER, id -> Optional.of(shift).filter(s -> id.equals("dark")));
    WetLook all = new WetLook(MIXER, id -> Optional.of(shift));
    WetLook none = new WetLook(MIXER, id -> Optional.empty());
    double share = MIXER.volumes(recipe)[1];
    double between = share * all.lab(recipe, 0.5).l() + (1 - share) * none.lab(recipe, 0.5).l();
    assertThat(one.lab(recipe, 0.5).l()).isCloseTo(between, TINY);
  }

  private static Optics flat(double k) {
    return new Optics(Spectrum.flat(k), Spectrum.flat(0.1), OpticsSource.SPECTRA, 1);
  }
}
