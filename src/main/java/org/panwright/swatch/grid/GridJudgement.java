package org.panwright.swatch.grid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import org.panwright.colour.Lab;
import org.panwright.paint.Optics;
import org.panwright.paint.Paper;
import org.panwright.paint.WashStrengths;
import org.panwright.swatch.coat.Reading;
import org.panwright.swatch.coat.Swatch;
import org.panwright.swatch.coat.SwatchSet;
import org.panwright.swatch.fit.FitRefusedException;
import org.panwright.swatch.fit.FitReport;
import org.panwright.swatch.fit.FitSettings;
import org.panwright.swatch.fit.FitWatch;
import org.panwright.swatch.fit.OpticsFit;

/**
 * Every cell of a chart beside what all the others teach, and which cells disagree.
 *
 * <p>Cells very far from what is known so far are set aside at once. The paints are fitted to the
 * others together; cells far from the fit are set aside and the rest is fitted again, until no more
 * stand out. A colour the picture cannot hold is neither learnt from nor judged. Those set aside
 * are then compared with each other's prediction: two that fit each other's place were exchanged.
 * What a cell set aside should look like is told at the thickness at which the others were laid,
 * not at the one that comes nearest to the wrong colour ({@link UsualThickness}). The law of the
 * cells is that of {@link CellLaw}.
 *
 * @param cells in the order they were read
 * @param optics what the agreeing cells teach of each paint, by id
 * @param exchangedLabels two rows or columns whose labels look exchanged, if so
 */
public record GridJudgement(
    List<JudgedCell> cells, Map<String, Optics> optics, Optional<ExchangedLabels> exchangedLabels) {
  private static final int ROUNDS = 5;
  private static final double FAR = 6;
  private static final double FAR_FROM_ESTIMATE = 12;
  private static final double TIMES_MEDIAN = 3.5;
  private static final double MOST_ASIDE = 0.2;

  public GridJudgement {
    cells = List.copyOf(cells);
    optics = Map.copyOf(optics);
  }

  /**
   * Judges a chart. Takes up to {@value #ROUNDS} fits.
   *
   * @param known the optics of all paints of the chart so far, by id
   * @param watch asked now and then; if nobody wants to know any more the judging stops
   * @throws FitRefusedException if nothing can be learnt from the cells
   * @throws java.util.concurrent.CancellationException if {@code watch} said so
   */
  public static GridJudgement of(
      GridReading reading,
      Map<String, Optics> known,
      Paper paper,
      WashStrengths washes,
      FitWatch watch)
      throws FitRefusedException {
    CellLaw law = new CellLaw(known, paper, washes);
    Optional<ExchangedLabels> labels = new LabelCheck(reading, law).find();
    List<CellReading> cells = reading.cells();
    Map<String, Optics> learnt = known;
    List<CellLaw.Foretold> foretold = foretold(cells, law);
    boolean[] aside = standOut(cells, foretold, FAR_FROM_ESTIMATE);
    for (int round = 0; round < ROUNDS; round++) {
      // How many rounds it takes is not known before: each is told as half of what is left.
      double left = Math.pow(0.5, round);
      BooleanSupplier outdated = watch.part(1 - left, 1 - left / 2, FitWatch.ONE_FIT);
      learnt = fit(cells, aside, law, paper, known, outdated);
      law = new CellLaw(learnt, paper, washes);
      foretold = foretold(cells, law);
      boolean[] next = standOut(cells, foretold, FAR);
      boolean same = Arrays.equals(next, aside);
      aside = next;
      if (same) {
        break;
      }
    }
    return new GridJudgement(judged(cells, foretold, aside, law), learnt, labels);
  }

  private static Map<String, Optics> fit(
      List<CellReading> cells,
      boolean[] aside,
      CellLaw law,
      Paper paper,
      Map<String, Optics> known,
      BooleanSupplier outdated)
      throws FitRefusedException {
    Reading ground = new Reading.OfSpectrum(paper.reflectance());
    List<Swatch> swatches = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      CellReading cell = cells.get(i);
      if (!aside[i] && !cell.patch().isBeyondPicture()) {
        Lab seen = cell.patch().lab();
        CellLaw.Foretold by = law.nearestByEye(cell.content(), seen);
        swatches.add(
            new Swatch(
                cell.row() + "/" + cell.column(),
                law.loads(by.content(), by.load()),
                new Reading.OfColour(seen),
                ground));
      }
    }
    FitReport report = OpticsFit.of(new SwatchSet(swatches), FitSettings.FOR_ENGINE, outdated);
    Map<String, Optics> learnt = new LinkedHashMap<>(known);
    learnt.putAll(report.optics());
    return learnt;
  }

  private static List<CellLaw.Foretold> foretold(List<CellReading> cells, CellLaw law) {
    return cells.stream()
        .map(cell -> law.nearestByEye(cell.content(), cell.patch().lab()))
        .toList();
  }

  /** The cells far from their prediction, the farthest first where there are too many. */
  private static boolean[] standOut(
      List<CellReading> cells, List<CellLaw.Foretold> foretold, double least) {
    double[] sorted = foretold.stream().mapToDouble(CellLaw.Foretold::distance).sorted().toArray();
    double limit = Math.max(least, TIMES_MEDIAN * sorted[sorted.length / 2]);
    boolean[] far = new boolean[foretold.size()];
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < far.length; i++) {
      if (foretold.get(i).distance() > limit && !cells.get(i).patch().isBeyondPicture()) {
        order.add(i);
      }
    }
    order.sort(Comparator.comparingDouble(i -> -foretold.get(i).distance()));
    order.stream().limit((long) (MOST_ASIDE * far.length)).forEach(i -> far[i] = true);
    return far;
  }

  private static List<JudgedCell> judged(
      List<CellReading> cells, List<CellLaw.Foretold> foretold, boolean[] aside, CellLaw law) {
    int[] partners = partners(cells, aside, law);
    UsualThickness usual = UsualThickness.of(cells, foretold, aside, law);
    List<JudgedCell> judged = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      CellReading cell = cells.get(i);
      CellVerdict verdict =
          partners[i] >= 0
              ? CellVerdict.EXCHANGED
              : aside[i] ? CellVerdict.DISAGREES : CellVerdict.AGREES;
      CellLaw.Foretold by =
          aside[i]
              ? law.at(cell.content(), usual.load(cell.content().wash()), cell.patch().lab())
              : foretold.get(i);
      judged.add(
          new JudgedCell(
              cell,
              by.lab(),
              by.distance(),
              by.load(),
              law.secondShare(by.content()),
              verdict,
              partners[i] >= 0 ? OptionalInt.of(partners[i]) : OptionalInt.empty()));
    }
    return judged;
  }

  /** For each cell set aside the one it changed places with, or −1. */
  private static int[] partners(List<CellReading> cells, boolean[] aside, CellLaw law) {
    int[] partners = new int[cells.size()];
    Arrays.fill(partners, -1);
    for (int i = 0; i < partners.length; i++) {
      for (int j = i + 1; j < partners.length; j++) {
        boolean free = aside[i] && aside[j] && partners[i] < 0 && partners[j] < 0;
        if (free
            && fits(cells.get(i), cells.get(j), law)
            && fits(cells.get(j), cells.get(i), law)) {
          partners[i] = j;
          partners[j] = i;
        }
      }
    }
    return partners;
  }

  /** Whether what is seen in one cell is what another was to hold. */
  private static boolean fits(CellReading seen, CellReading meant, CellLaw law) {
    return law.nearestByEye(meant.content(), seen.patch().lab()).distance() < FAR;
  }
}
