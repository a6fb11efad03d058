package org.panwright.analysis.worth;

/**
 * Colours of a place that are met less well once a paint has left.
 *
 * @param share of all nearness to the colours that goes with it, 0..1
 * @param missed the name of the colour that loses most; empty if none loses anything
 * @param by by how much the nearest mix on the net is farther from that one, about ΔE00, 0..12
 */
public record SubjectsLost(double share, String missed, double by) {
  /** Nothing is lost, or the lineup goes on no outing with colours. */
  public static final SubjectsLost NONE = new SubjectsLost(0, "", 0);
}
