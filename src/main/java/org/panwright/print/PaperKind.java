package org.panwright.print;

import java.util.List;
import java.util.stream.Stream;

/** The kinds of papers, in the order they are offered. */
public enum PaperKind {
  KEY_CARD("key-card", CardOptions.USUAL.withList(true)),
  MIXING_CHART("mixing-chart", ChartOptions.USUAL),
  SWATCH_LADDER("swatch-ladder", LadderOptions.USUAL),
  PAN_LABELS("pan-labels", LabelOptions.USUAL),
  FILL_PLAN("fill-plan", FillPlanOptions.USUAL),
  PACKING_LIST("packing-list", PackingOptions.USUAL),
  COMPARISON("comparison", ComparisonOptions.USUAL),
  SWATCH_SHEET("swatch-sheet", SwatchSheetOptions.USUAL);

  private final String fileName;
  private final PaperOrder usual;

  PaperKind(String fileName, PaperOrder usual) {
    this.fileName = fileName;
    this.usual = usual;
  }

  /** The name of its file, without ending. */
  public String fileName() {
    return fileName;
  }

  /** The order most painters would give, on A4. */
  public PaperOrder usual() {
    return usual;
  }

  /** The usual orders of all kinds on one paper. */
  public static List<PaperOrder> allOn(PaperFormat paper) {
    return Stream.of(values()).map(kind -> kind.usual().withPaper(paper)).toList();
  }
}
