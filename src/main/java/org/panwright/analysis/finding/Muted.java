package org.panwright.analysis.finding;

/**
 * A finding that holds but is muted for the lineup.
 *
 * @param finding what was found
 * @param reason why the painter does not want to be told; may be empty
 */
public record Muted(Finding finding, String reason) {}
