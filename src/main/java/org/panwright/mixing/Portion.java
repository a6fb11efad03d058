package org.panwright.mixing;

/**
 * One paint's strength parts in a recipe.
 *
 * @param paintId the paint's id in the kit
 * @param parts strength parts, above 0
 */
public record Portion(String paintId, double parts) {
  public Portion {
    if (paintId.isBlank()) {
      throw new IllegalArgumentException("a portion names a paint");
    }
    if (!(parts > 0 && Double.isFinite(parts))) {
      throw new IllegalArgumentException("parts must be above 0, were " + parts);
    }
  }
}
