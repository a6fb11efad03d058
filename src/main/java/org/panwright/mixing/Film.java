package org.panwright.mixing;

import org.panwright.colour.Spectrum;
import org.panwright.paint.Optics;
import org.panwright.paint.Paper;

/**
 * A dry film of one or several paints mixed in the pan: the absorption K·X and scattering S·X of
 * the whole coat, and how far its gum smooths the face.
 *
 * <p>Mixing adds: by volume of paint on the paper,
 *
 * <pre>K·X = Σ loadᵢ Kᵢ,   S·X = Σ loadᵢ Sᵢ,   gloss = Σ loadᵢ glossᵢ</pre>
 *
 * <p>(D. R. Duncan, Proceedings of the Physical Society 52, 1940). Two constants always; the
 * shortcut that adds K/S holds only where one white makes all the scattering, which in watercolour
 * it does not.
 *
 * @param absorption K·X, 0 or more
 * @param scattering S·X, 0 or more
 * @param gloss of the whole coat, 0 or more; see {@link Surface#smoothed}
 */
public record Film(Spectrum absorption, Spectrum scattering, double gloss) {
  /** No paint at all. */
  public static final Film NONE = new Film(Spectrum.flat(0), Spectrum.flat(0), 0);

  public Film {
    absorption.requireWithin(0, Double.MAX_VALUE, "absorption of a film");
    scattering.requireWithin(0, Double.MAX_VALUE, "scattering of a film");
    if (!(gloss >= 0)) {
      throw new IllegalArgumentException("gloss must not be negative, was " + gloss);
    }
  }

  /** A coat of one paint at a load. */
  public static Film of(Optics optics, double load) {
    return NONE.plus(optics, load);
  }

  /**
   * The film with more paint stirred in.
   *
   * @param load 0 or more, 1 = a masstone coat
   */
  public Film plus(Optics optics, double load) {
    if (!(load >= 0)) {
      throw new IllegalArgumentException("load must not be negative, was " + load);
    }
    return new Film(
        Spectrum.ofBands(i -> absorption.at(i) + load * optics.absorption().at(i)),
        Spectrum.ofBands(i -> scattering.at(i) + load * optics.scattering().at(i)),
        gloss + load * optics.gloss());
  }

  /** The same film with {@code factor} times the paint on the same area. */
  public Film times(double factor) {
    return new Film(
        absorption.map(k -> k * factor), scattering.map(s -> s * factor), gloss * factor);
  }

  /**
   * The reflectance inside, over a substrate whose reflectance inside is {@code below}.
   *
   * <p>A glaze is this call twice: the lower film over the paper, the upper film over that. Order
   * matters when the upper film scatters.
   */
  public Spectrum over(Spectrum below) {
    return Spectrum.ofBands(
        i -> Coat.reflectance(absorption.at(i), scattering.at(i), 1, below.at(i)));
  }

  /** The reflectance inside, over bare paper. */
  public Spectrum over(Paper paper) {
    return over(ground(paper));
  }

  /** The reflectance seen from outside of this film, dry on paper. */
  public Spectrum dry(Paper paper) {
    return seen(paper.reflectance(), Surface.DRY);
  }

  /** The reflectance seen from outside of this film while water stands on it. */
  public Spectrum wet(Paper paper) {
    return over(paper).map(Surface.WET::outside);
  }

  /**
   * The reflectance seen from outside of this film over a ground.
   *
   * @param ground as read from outside; one darker than the face lets it be has less of a face
   * @param bare the face before the gum of the coat smooths it
   */
  public Spectrum seen(Spectrum ground, Surface bare) {
    Surface face = bare.below(ground.min());
    return over(ground.map(face::inside)).map(face.smoothed(gloss)::outside);
  }

  /** The reflectance inside the film's face of bare paper, read dry from outside. */
  public static Spectrum ground(Paper paper) {
    return paper.reflectance().map(Surface.DRY::inside);
  }
}
