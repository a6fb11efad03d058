package org.panwright.app.fx;

import javafx.scene.layout.VBox;

/**
 * A column that remembers its height until something in it changes.
 *
 * <p>A long list asks each of its parts for its height several times whenever one of them changes,
 * and the toolkit breaks wrapped text into lines anew each time.
 */
public class SteadyColumn extends VBox {
  private double preferredFor = Double.NaN;
  private double preferred;
  private double leastFor = Double.NaN;
  private double least;

  @Override
  public void requestLayout() {
    preferredFor = Double.NaN;
    leastFor = Double.NaN;
    super.requestLayout();
  }

  @Override
  protected double computePrefHeight(double width) {
    if (width != preferredFor) {
      preferred = super.computePrefHeight(width);
      preferredFor = width;
    }
    return preferred;
  }

  @Override
  protected double computeMinHeight(double width) {
    if (width != leastFor) {
      least = super.computeMinHeight(width);
      leastFor = width;
    }
    return least;
  }
}
