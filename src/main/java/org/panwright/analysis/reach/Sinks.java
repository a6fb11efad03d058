package org.panwright.analysis.reach;

import java.util.List;

/**
 * One walk for several sinks, in the order given.
 *
 * @param sinks at least one
 */
public record Sinks(List<Net.Sink> sinks) implements Net.Sink {
  /** Several sinks as one. */
  public static Sinks of(Net.Sink... sinks) {
    return new Sinks(List.of(sinks));
  }

  @Override
  public void single(int paint, double[] colours) {
    for (Net.Sink sink : sinks) {
      sink.single(paint, colours);
    }
  }

  @Override
  public void pair(int first, int second, double[] colours) {
    for (Net.Sink sink : sinks) {
      sink.pair(first, second, colours);
    }
  }

  @Override
  public void triad(int first, int second, int third, double[] colours) {
    for (Net.Sink sink : sinks) {
      sink.triad(first, second, third, colours);
    }
  }
}
