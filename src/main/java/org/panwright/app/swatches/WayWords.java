package org.panwright.app.swatches;

/**
 * What a way of reading says of itself.
 *
 * @param name on its button
 * @param purpose what it is for, in a sentence
 * @param empty in place of the picture while there is none
 * @param hint how its marks are put in place, under the picture
 */
public record WayWords(String name, String purpose, String empty, String hint) {}
