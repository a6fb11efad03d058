package org.panwright.mixing;

import java.util.Comparator;
import java.util.List;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Spectrum;
import org.panwright.paint.OpticsSource;

/**
 * Mixes recipes of the paints of a table, one at a time and in full spectral detail.
 *
 * <p>For thousands of mixes use {@link BatchMixer}, which gives the same colours.
 */
public record Mixer(OpticsTable table) {
  private static final double LAW_ERROR = 2.5;

  /**
   * The share of each portion by volume of paint, in the recipe's order; sums to 1.
   *
   * <pre>vᵢ = partsᵢ · tintLoadᵢ / Σ partsⱼ · tintLoadⱼ</pre>
   */
  public double[] volumes(Recipe recipe) {
    List<Portion> portions = recipe.portions();
    double[] volumes = new double[portions.size()];
    double total = 0;
    for (int i = 0; i < volumes.length; i++) {
      Portion portion = portions.get(i);
      volumes[i] = portion.parts() * table.tintLoad(table.indexOf(portion.paintId()));
      total += volumes[i];
    }
    for (int i = 0; i < volumes.length; i++) {
      volumes[i] /= total;
    }
    return volumes;
  }

  /**
   * The film of a recipe at a total load.
   *
   * @param load paint of the mix per area, 1 = the load of a masstone coat
   */
  public Film film(Recipe recipe, double load) {
    double[] volumes = volumes(recipe);
    Film film = Film.NONE;
    for (int i = 0; i < volumes.length; i++) {
      int paint = table.indexOf(recipe.portions().get(i).paintId());
      film = film.plus(table.optics(paint), load * volumes[i]);
    }
    return film;
  }

  /** The reflectance from outside of a recipe painted at a load on the table's paper, dry. */
  public Spectrum dry(Recipe recipe, double load) {
    return film(recipe, load).dry(table.paper());
  }

  /** The reflectance of the same coat freshly wet; see {@link Surface#WET}. */
  public Spectrum wet(Recipe recipe, double load) {
    return film(recipe, load).wet(table.paper());
  }

  /** CIELAB of the dry coat under D65. */
  public Lab lab(Recipe recipe, double load) {
    return Light.D65.lab(dry(recipe, load));
  }

  /**
   * The CIEDE2000 error to expect of a recipe's colour: the volume-weighted mean of its paints'
   * squared errors, and for mixes the error of the mixing law itself.
   *
   * <pre>E² = Σ vᵢ Eᵢ² + (n > 1 ? 2.5² : 0)</pre>
   *
   * <p>2.5 is the median error of plain two-constant mixing on published spectra of real
   * watercolour mixes.
   */
  public double expectedError(Recipe recipe) {
    double[] volumes = volumes(recipe);
    double squared = volumes.length > 1 ? LAW_ERROR * LAW_ERROR : 0;
    for (int i = 0; i < volumes.length; i++) {
      double error =
          table.optics(table.indexOf(recipe.portions().get(i).paintId())).expectedError();
      squared += volumes[i] * error * error;
    }
    return Math.sqrt(squared);
  }

  /** How far the colour of a recipe can be trusted. */
  public Trust trust(Recipe recipe) {
    OpticsSource weakest =
        recipe.portions().stream()
            .map(portion -> table.optics(table.indexOf(portion.paintId())).source())
            .max(Comparator.naturalOrder())
            .orElseThrow();
    return new Trust(weakest, expectedError(recipe));
  }
}
