package org.panwright.mixing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.panwright.colour.Bands;
import org.panwright.colour.Spectrum;
import org.panwright.paint.Optics;
import org.panwright.paint.Paint;
import org.panwright.paint.Paper;
import org.panwright.paint.PigmentLibrary;

/**
 * The optics of several paints on one paper, numbered from 0 and laid flat for the hot loops.
 *
 * <p>Built once per shelf and shared by all threads; immutable.
 */
public final class OpticsTable {
  private final List<String> ids;
  private final Map<String, Integer> index = new HashMap<>();
  private final List<Optics> optics;
  private final Paper paper;
  private final double[] absorption;
  private final double[] scattering;
  private final double[] gloss;
  private final double[] ground = new double[Bands.COUNT];
  private final double[] tintLoads;

  private OpticsTable(List<String> ids, List<Optics> optics, Paper paper) {
    this.ids = List.copyOf(ids);
    this.optics = List.copyOf(optics);
    this.paper = paper;
    int size = ids.size();
    absorption = new double[size * Bands.COUNT];
    scattering = new double[size * Bands.COUNT];
    gloss = new double[size];
    tintLoads = new double[size];
    for (int paint = 0; paint < size; paint++) {
      if (index.put(ids.get(paint), paint) != null) {
        throw new IllegalArgumentException("two paints have the id " + ids.get(paint));
      }
      for (int band = 0; band < Bands.COUNT; band++) {
        absorption[paint * Bands.COUNT + band] = optics.get(paint).absorption().at(band);
        scattering[paint * Bands.COUNT + band] = optics.get(paint).scattering().at(band);
      }
      gloss[paint] = optics.get(paint).gloss();
      tintLoads[paint] = TintLoad.of(optics.get(paint), paper);
    }
    Spectrum inside = Film.ground(paper);
    for (int band = 0; band < Bands.COUNT; band++) {
      ground[band] = inside.at(band);
    }
  }

  /** The table of these paints in their order. */
  public static OpticsTable of(List<Paint> paints, PigmentLibrary library, Paper paper) {
    List<String> ids = new ArrayList<>();
    List<Optics> optics = new ArrayList<>();
    for (Paint paint : paints) {
      ids.add(paint.id());
      optics.add(paint.optics(library));
    }
    return new OpticsTable(ids, optics, paper);
  }

  /** The table of bare optics under ids of the caller's; the lists have the same length. */
  public static OpticsTable of(List<String> ids, List<Optics> optics, Paper paper) {
    if (ids.size() != optics.size()) {
      throw new IllegalArgumentException("ids and optics differ in number");
    }
    return new OpticsTable(ids, optics, paper);
  }

  /** How many paints. */
  public int size() {
    return ids.size();
  }

  /** The ids in the order of their numbers. */
  public List<String> ids() {
    return ids;
  }

  /**
   * The number of a paint.
   *
   * @throws IllegalArgumentException if it is not in the table
   */
  public int indexOf(String id) {
    Integer found = index.get(id);
    if (found == null) {
      throw new IllegalArgumentException("no optics for paint " + id);
    }
    return found;
  }

  /**
   * The numbers of paints, in the order given.
   *
   * @throws IllegalArgumentException if one is not in the table
   */
  public int[] indicesOf(List<String> ids) {
    return ids.stream().mapToInt(this::indexOf).toArray();
  }

  /** The optics of a paint by number. */
  public Optics optics(int paint) {
    return optics.get(paint);
  }

  /** The load of one strength part of a paint; see {@link TintLoad}. */
  public double tintLoad(int paint) {
    return tintLoads[paint];
  }

  /** The paper all coats lie on. */
  public Paper paper() {
    return paper;
  }

  double[] absorption() {
    return absorption;
  }

  double[] scattering() {
    return scattering;
  }

  double[] gloss() {
    return gloss;
  }

  double[] ground() {
    return ground;
  }
}
