/**
 * The Kubelka–Munk engine: coats over paper, the surface, mixing, glazing, strength parts, the mix
 * grid.
 *
 * <p>Read in this order: {@link org.panwright.mixing.Coat} (the equation), {@link
 * org.panwright.mixing.Surface}, {@link org.panwright.mixing.Film}, {@link
 * org.panwright.mixing.OpticsTable} and {@link org.panwright.mixing.Recipe}; then {@link
 * org.panwright.mixing.BatchMixer} and {@link org.panwright.mixing.MixGrid} for many mixes at once.
 *
 * <p>Knows {@code colour} and {@code paint}. It knows no box and no sentence.
 */
package org.panwright.mixing;
