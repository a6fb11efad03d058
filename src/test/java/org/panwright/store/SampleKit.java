package org.panwright.store;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.colour.Lab;
import org.panwright.colour.Spectrum;
import org.panwright.kit.Box;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.kit.SubjectColour;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.paint.Granulation;
import org.panwright.paint.Handling;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.Paper;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Shelf;
import org.panwright.paint.Staining;
import org.panwright.paint.Transparency;
import org.panwright.paint.WashStrengths;

/** A small kit that uses everything a kit can hold. */
final class SampleKit {
  static final Kit KIT =
      new Kit(
          "Harbour kit — Ærø 🎨",
          new Shelf(List.of(ultramarine(), green(), measured())),
          List.of(box()),
          List.of(new Lineup("l1", "Blues", "b1", fillings())),
          List.of(
              new Outing(
                  "o1",
                  "Quay",
                  Optional.of(LocalDate.of(2026, 5, 17)),
                  "by the \"old\" crane",
                  Optional.of("l1"),
                  3.5,
                  4,
                  List.of(
                      new SubjectColour("tarred planks", new Lab(22.5, 1, 2)),
                      new SubjectColour("water", new Lab(48, -12.25, -20))))),
          new Paper("rough rag", Spectrum.ofWavelengths(nm -> 0.7 + nm / 7300)),
          new WashStrengths(List.of(1.1, 0.6, 0.3, 0.1, 0.05)),
          "first line\nsecond line\tend");

  private SampleKit() {}

  private static Paint ultramarine() {
    return new Paint(
        "p1",
        "Ultramarine",
        "",
        List.of(new PigmentShare(PigmentName.of("PB29"), 1)),
        new Handling(Transparency.TRANSPARENT, Staining.LOW, Granulation.STRONG, Lightfastness.I),
        Ownership.OWNED,
        Optional.empty(),
        "");
  }

  private static Paint green() {
    return new Paint(
        "p2",
        "أخضر الزيتون",
        "own mixture",
        List.of(
            new PigmentShare(PigmentName.of("PB29"), 1.0 / 3),
            new PigmentShare(PigmentName.parse("PBr7 raw sienna"), 2.0 / 3)),
        new Handling(
            Transparency.SEMI_TRANSPARENT, Staining.MEDIUM, Granulation.SLIGHT, Lightfastness.II),
        Ownership.TRIED,
        Optional.empty(),
        "mixed in spring");
  }

  private static Paint measured() {
    return new Paint(
        "p3",
        "Found blue",
        "",
        List.of(new PigmentShare(PigmentName.of("PB299"), 1)),
        new Handling(Transparency.OPAQUE, Staining.HIGH, Granulation.NONE, Lightfastness.UNRATED),
        Ownership.WISHED,
        Optional.of(
            new Optics(
                Spectrum.ofWavelengths(nm -> 1 / (nm - 300)),
                Spectrum.flat(0.1),
                OpticsSource.SWATCHES,
                3.2)),
        "");
  }

  private static Box box() {
    return new Box(
        "b1",
        "Tin",
        100,
        60.5,
        102,
        62,
        List.of(
            new Well("w1", "1", WellKind.HALF_PAN, 0, 0, 19, 16),
            new Well("w2", "2", WellKind.PAN, 19, 0, 30, 19),
            new Well("w3", "dab 1", WellKind.DAB, 60, 0, 10, 10)));
  }

  private static Map<String, Filling> fillings() {
    Map<String, Filling> fillings = new LinkedHashMap<>();
    fillings.put("w2", new Filling("p1", Fill.HALF));
    fillings.put("w1", new Filling("p2", Fill.FULL));
    fillings.put("w3", new Filling("p3", Fill.DAB));
    return fillings;
  }
}
