package org.panwright.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.panwright.colour.Difference;
import org.panwright.colour.Lab;
import org.panwright.swatch.check.MixErrors;
import org.panwright.swatch.check.OddCoat;
import org.panwright.swatch.check.PaintResiduals;
import org.panwright.swatch.file.CoatTable;
import org.panwright.words.MixCheckWords;

/**
 * What {@code mixcheck} found.
 *
 * @param law how far the engine's predictions are off
 * @param average how far averages of sRGB are off
 * @param paints how well the fitted coats of each paint come out
 * @param odd the fitted coat that disagrees with the rest, if one does
 * @param farthest the mixes predicted worst, the worst first
 */
record MixCheckAnswer(
    MixErrors law,
    MixErrors average,
    List<PaintResiduals> paints,
    Optional<OddCoat> odd,
    List<FarMix> farthest) {
  private static final int FARTHEST = 3;
  private static final int DECIMALS = 4;

  /** One mix and the CIEDE2000 it is off by. */
  record FarMix(String sample, double ciede2000) {
    /** The few that are off most. */
    static List<FarMix> of(List<CoatTable.Row> mixes, List<Lab> predicted) {
      return IntStream.range(0, mixes.size())
          .mapToObj(
              i ->
                  new FarMix(
                      mixes.get(i).name(),
                      Difference.ciede2000(mixes.get(i).reading().lab(), predicted.get(i))))
          .sorted(Comparator.comparingDouble((FarMix mix) -> -mix.ciede2000()))
          .limit(FARTHEST)
          .toList();
    }
  }

  String text(String fitFile, String testFile) {
    List<String> lines = new ArrayList<>();
    lines.add(MixCheckWords.summary(law, average));
    lines.add(
        MixCheckWords.farthest(
            testFile,
            farthest.stream().map(mix -> MixCheckWords.far(mix.sample, mix.ciede2000)).toList()));
    lines.add("");
    lines.add(MixCheckWords.fitted(fitFile, paints));
    lines.add(odd.map(MixCheckWords::odd).orElse(MixCheckWords.noneOdd(fitFile)));
    return String.join("\n", lines);
  }

  ObjectNode json() {
    ObjectNode node = json(law);
    node.set("srgbAverage", json(average));
    ArrayNode far = node.putArray("farthest");
    farthest.forEach(mix -> far.add(sample(mix.sample).put("ciede2000", rounded(mix.ciede2000))));
    ArrayNode fitted = node.putArray("paints");
    for (PaintResiduals paint : paints) {
      fitted.add(
          Json.object()
              .put("paint", paint.paint())
              .put("coats", paint.coats())
              .put("median", rounded(paint.median()))
              .put("max", rounded(paint.farthest().ciede2000()))
              .put("farthest", paint.farthest().swatch().name())
              .put("expectedError", rounded(paint.expectedError())));
    }
    odd.ifPresentOrElse(
        coat ->
            node.set("odd", sample(coat.swatch().name()).put("foretold", rounded(coat.foretold()))),
        () -> node.putNull("odd"));
    return node;
  }

  private static ObjectNode sample(String name) {
    return Json.object().put("sample", name);
  }

  private static ObjectNode json(MixErrors errors) {
    return Json.object()
        .put("n", errors.n())
        .put("median", rounded(errors.median()))
        .put("p90", rounded(errors.p90()))
        .put("max", rounded(errors.max()))
        .put("shareUnder5", rounded(errors.shareUnder5()));
  }

  private static double rounded(double value) {
    return Json.rounded(value, DECIMALS);
  }
}
