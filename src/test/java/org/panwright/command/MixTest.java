package org.panwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.github.ajalt.colormath.model.SRGB;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.analysis.Lineups;
import org.panwright.colour.Hue;
import org.panwright.colour.Lab;
import org.panwright.kit.Kit;
import org.panwright.paint.CoatReading;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.Shelf;
import org.panwright.paint.Swatchbook;

class MixTest {
  private static JsonNode answer(String... arguments) throws Exception {
    Console console = new Console();
    String[] all = java.util.Arrays.copyOf(arguments, arguments.length + 2);
    all[arguments.length] = "--json";
    all[arguments.length + 1] = "--wash=milk";
    if (String.join(" ", arguments).contains("--wash")) {
      all = java.util.Arrays.copyOf(all, all.length - 1);
    }
    assertThat(console.run(prefixed(all))).isZero();
    assertThat(console.complained()).isEmpty();
    return new ObjectMapper().readTree(console.said());
  }

  private static String[] prefixed(String[] arguments) {
    String[] all = new String[arguments.length + 1];
    all[0] = "mix";
    System.arraycopy(arguments, 0, all, 1, arguments.length);
    return all;
  }

  @Test
  void everyFieldIsThereInItsRange() throws Exception {
    JsonNode mix = answer("PB29:2", "PBr7 burnt sienna");

    assertThat(mix.get("lab")).hasSize(3);
    assertThat(mix.get("oklch")).hasSize(3);
    assertThat(mix.get("srgb")).hasSize(3);
    mix.get("srgb").forEach(v -> assertThat(v.isInt() && v.intValue() <= 255).isTrue());
    assertThat(mix.get("reflectance")).hasSize(36);
    mix.get("reflectance").forEach(r -> assertThat(r.doubleValue()).isBetween(0.0, 1.0));
    assertThat(mix.get("hue").textValue()).isNotBlank();
    assertThat(mix.get("expectedError").doubleValue()).isPositive();
    assertThat(mix.get("recipe").get(0).get("paint").textValue()).isEqualTo("PB29");
    assertThat(mix.get("recipe").get(0).get("parts").doubleValue()).isEqualTo(2);
    double volume = 0;
    for (JsonNode part : mix.get("recipe")) {
      volume += part.get("volume").doubleValue();
    }
    assertThat(volume).isCloseTo(1.0, Offset.offset(1e-3));
  }

  @Test
  void labAndScreenColourAreTheSameColour() throws Exception {
    JsonNode mix = answer("PY43", "--wash", "coffee");
    assertThat(mix.get("onScreen").booleanValue()).isTrue();
    JsonNode rgb = mix.get("srgb");
    // A general colour library takes the way back from the screen.
    SRGB space = SRGB.INSTANCE;
    var lab =
        space
            .from255(rgb.get(0).intValue(), rgb.get(1).intValue(), rgb.get(2).intValue(), 255)
            .toLAB();

    assertThat((double) lab.getL()).isCloseTo(mix.get("lab").get(0).doubleValue(), half());
    assertThat((double) lab.getA()).isCloseTo(mix.get("lab").get(1).doubleValue(), half());
    assertThat((double) lab.getB()).isCloseTo(mix.get("lab").get(2).doubleValue(), half());
  }

  private static Offset<Double> half() {
    return Offset.offset(0.6);
  }

  @Test
  void moreWaterLightens() throws Exception {
    double before = -1;
    for (String wash : new String[] {"butter", "cream", "milk", "coffee", "tea"}) {
      double lightness = answer("PB29", "--wash", wash).get("lab").get(0).doubleValue();
      assertThat(lightness).isGreaterThan(before);
      before = lightness;
    }
  }

  @Test
  void milkIsMeantWhereNoWashIsNamed() throws Exception {
    Console console = new Console();
    console.run("mix", "PB29", "--json");

    assertThat(new ObjectMapper().readTree(console.said()))
        .isEqualTo(answer("PB29", "--wash", "milk"));
  }

  @Test
  void wetIsDarker() throws Exception {
    assertThat(answer("PB29", "--wet").get("lab").get(0).doubleValue())
        .isLessThan(answer("PB29").get("lab").get(0).doubleValue());
  }

  /** A place of L* 40 that the painter read at L* 29 while wet: 11 darker, by subtraction. */
  @Test
  void wetIsAsThePainterReadIt(@TempDir Path folder) throws Exception {
    Paint blue = Lineups.paint("PB29");
    PaintedCoat read =
        PaintedCoat.of(
                "a", new CoatReading.OfColour(new Lab(40, 10, -40)), PaintedCoat.Strength.FULL)
            .withWet(new CoatReading.OfColour(new Lab(29, 10, -40)));
    Paint known = blue.withSwatchbook(Swatchbook.EMPTY.with(List.of(read)));
    Path file = Console.saved(Kit.empty("wet").withShelf(new Shelf(List.of(known))), folder);
    String[] masstone = {known.name(), "--kit", file.toString(), "--wash", "butter"};
    String[] wet = {known.name(), "--kit", file.toString(), "--wash", "butter", "--wet"};
    double dry = answer(masstone).get("lab").get(0).doubleValue();

    assertThat(dry).isLessThan(40);
    assertThat(answer(wet).get("lab").get(0).doubleValue())
        .isCloseTo(Math.max(0, dry - 11), Offset.offset(0.02));
  }

  @Test
  void yellowAndPhthaloBlueMakeABrightGreen() throws Exception {
    // Common practice.
    JsonNode oklch = answer("PY3", "PB15:3").get("oklch");

    assertThat(Hue.between(oklch.get(2).doubleValue(), 148)).isLessThan(20);
    assertThat(oklch.get(1).doubleValue()).isGreaterThan(0.1);
  }

  @Test
  void answerForPeopleNamesPartsColourAndTrust() {
    Console console = new Console();
    assertThat(console.run("mix", "PB29:2", "PY154")).isZero();

    assertThat(console.said())
        .contains("2 parts PB29 + 1 part PY154", "milk wash, dry", "L*", "#", "Expect");
  }

  @Test
  void paintsOfAKitAreMixedByName(@TempDir Path folder) throws Exception {
    Path kit = Console.demo(folder);
    JsonNode mix = answer("Burnt sienna:2", "Ultramarine blue", "--kit", kit.toString());

    assertThat(mix.get("recipe").get(0).get("paint").textValue()).isEqualTo("Burnt sienna");
    // Common practice: the two make greys.
    assertThat(mix.get("oklch").get(1).doubleValue()).isLessThan(0.08);
  }
}
