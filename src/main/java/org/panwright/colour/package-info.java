/**
 * Colour science without paint: spectra, lights, the observer, colour spaces, differences and hue
 * words.
 *
 * <p>Read in this order: {@link org.panwright.colour.Bands}, {@link org.panwright.colour.Spectrum},
 * {@link org.panwright.colour.Light} (spectrum to {@link org.panwright.colour.Xyz}), then {@link
 * org.panwright.colour.Lab}, {@link org.panwright.colour.Oklch}, {@link
 * org.panwright.colour.GamutFit} and {@link org.panwright.colour.Difference}.
 *
 * <p>Every conversion names its white; nothing here has a hidden default. This package knows no
 * other package of the project.
 */
package org.panwright.colour;
