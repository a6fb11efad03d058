package org.panwright.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.panwright.colour.GamutFit;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.colour.Oklch;
import org.panwright.colour.Spectrum;
import org.panwright.colour.Srgb;
import org.panwright.colour.Xyz;
import org.panwright.mixing.Mixer;
import org.panwright.mixing.OpticsTable;
import org.panwright.mixing.Portion;
import org.panwright.mixing.Recipe;
import org.panwright.mixing.WetLook;
import org.panwright.paint.DryingShift;
import org.panwright.paint.Paper;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;
import org.panwright.words.ColourWords;
import org.panwright.words.CommandWords;
import org.panwright.words.PaintWords;

/**
 * What {@code mix} answers: one coat of a mix on paper, under D65 for the CIE 1931 2° observer.
 *
 * @param parts the paints in the order asked for
 * @param volumes each paint's share by volume, summing to 1
 * @param wash how much water
 * @param wet whether the coat is still wet
 * @param lab of the coat; wet as the painter read its paints wet, where that was done
 * @param reflectance seen from outside, 0..1; of a wet coat by the rule alone
 * @param expectedError CIEDE2000
 */
record MixAnswer(
    List<Part> parts,
    List<Double> volumes,
    Wash wash,
    boolean wet,
    Lab lab,
    Spectrum reflectance,
    double expectedError) {
  static MixAnswer of(List<Part> parts, Paper paper, WashStrengths washes, Wash wash, boolean wet) {
    Mixer mixer =
        new Mixer(
            OpticsTable.of(
                parts.stream().map(Part::name).toList(),
                parts.stream().map(Part::optics).toList(),
                paper));
    Recipe recipe =
        new Recipe(parts.stream().map(part -> new Portion(part.name(), part.parts())).toList());
    double load = washes.load(wash);
    Map<String, Optional<DryingShift>> shifts =
        parts.stream().collect(Collectors.toMap(Part::name, Part::shift));
    return new MixAnswer(
        parts,
        Arrays.stream(mixer.volumes(recipe)).boxed().toList(),
        wash,
        wet,
        wet ? new WetLook(mixer, shifts::get).lab(recipe, load) : mixer.lab(recipe, load),
        wet ? mixer.wet(recipe, load) : mixer.dry(recipe, load),
        mixer.expectedError(recipe));
  }

  /** As JSON, the fields documented in docs/command-line.md. */
  ObjectNode json() {
    Xyz xyz = lab.toXyz(Light.D65.white());
    Oklch oklch = Oklab.ofD65(xyz).toOklch();
    GamutFit fit = GamutFit.of(oklch);
    ObjectNode node = Json.object();
    ArrayNode recipe = node.putArray("recipe");
    for (int i = 0; i < parts.size(); i++) {
      recipe
          .addObject()
          .put("paint", parts.get(i).name())
          .put("parts", parts.get(i).parts())
          .put("volume", Json.rounded(volumes.get(i), 4));
    }
    node.put("wash", PaintWords.label(wash));
    node.put("wet", wet);
    node.set("lab", Json.lab(lab));
    node.set("oklch", Json.numbers(new double[] {oklch.l(), oklch.c(), oklch.hueDeg()}, 4));
    Srgb shown = fit.shown();
    node.putArray("srgb").add(shown.redByte()).add(shown.greenByte()).add(shown.blueByte());
    node.put("onScreen", fit.exact());
    node.put("hue", ColourWords.describe(oklch));
    node.set("reflectance", Json.numbers(reflectance.toArray(), 5));
    node.put("expectedError", Json.rounded(expectedError, 2));
    return node;
  }

  /** As a few lines for a person. */
  String text() {
    Xyz xyz = lab.toXyz(Light.D65.white());
    Oklch oklch = Oklab.ofD65(xyz).toOklch();
    return CommandWords.mix(
        parts.stream().map(part -> CommandWords.parts(part.parts(), part.name())).toList(),
        volumes,
        wash,
        wet,
        oklch,
        lab,
        GamutFit.of(oklch),
        expectedError);
  }
}
