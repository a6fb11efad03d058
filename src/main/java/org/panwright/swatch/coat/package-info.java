/**
 * Dry coats as they were read, before anyone asks what follows from them.
 *
 * <p>Read in this order: {@link org.panwright.swatch.coat.Reading} (one dry place), {@link
 * org.panwright.swatch.coat.Swatch} (one coat over its ground), {@link
 * org.panwright.swatch.coat.SwatchSet} (those that are fitted together).
 */
package org.panwright.swatch.coat;
