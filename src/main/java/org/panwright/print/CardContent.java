package org.panwright.print;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.panwright.kit.Box;
import org.panwright.words.CardWords;
import org.panwright.words.PaintWords;

/** All that a key card says, before anything has a place. */
record CardContent(
    String lineup,
    Box box,
    List<CardWell> wells,
    List<CardMix> mixes,
    LocalDate date,
    CardFormat format,
    CardOptions.Fields fields) {
  CardContent {
    wells = List.copyOf(wells);
    mixes = List.copyOf(mixes);
  }

  boolean isPredicted() {
    return fields == CardOptions.Fields.PREDICTED;
  }

  String orientation() {
    return format == CardFormat.LID ? CardWords.THIS_EDGE_TO_HINGE : CardWords.HINGE_SIDE;
  }

  /** The small print: marks, colours, cautions, placeholders; a sentence or two each. */
  List<String> smallPrint() {
    List<String> lines = new ArrayList<>();
    lines.add(
        PaintWords.LEGEND + "." + (format == CardFormat.LID ? " " + CardWords.HINGE_SIDE : ""));
    if (isPredicted()) {
      double error = filled().stream().mapToDouble(CardWell.Filled::expectedError).max().orElse(0);
      String beyond =
          filled().stream().allMatch(f -> f.run().exact())
              ? ""
              : " " + CardWords.BEYOND_PRINT_LEGEND + ".";
      if (error > 0) {
        lines.add(CardWords.estimates(error) + beyond);
      }
    } else {
      lines.add(CardWords.fieldsToPaint());
    }
    Map<String, List<String>> metals = wellsByMetal();
    if (!metals.isEmpty()) {
      lines.add(CardWords.metals(metals));
    }
    if (!isWhollyPrintable()) {
      lines.add(CardWords.PLACEHOLDER_LEGEND + ".");
    }
    return lines;
  }

  private List<CardWell.Filled> filled() {
    return wells.stream().flatMap(well -> well.filled().stream()).toList();
  }

  private Map<String, List<String>> wellsByMetal() {
    Map<String, List<String>> found = new TreeMap<>();
    for (CardWell well : wells) {
      well.filled().stream()
          .flatMap(filled -> filled.metals().stream())
          .forEach(
              metal ->
                  found
                      .computeIfAbsent(metal, unused -> new ArrayList<>())
                      .add(well.well().label()));
    }
    return found;
  }

  private boolean isWhollyPrintable() {
    return Script.isComplete(lineup)
        && Script.isComplete(box.name())
        && wells.stream().allMatch(well -> Script.isComplete(well.well().label()))
        && filled().stream().allMatch(filled -> Script.isComplete(filled.paint().name()));
  }
}
