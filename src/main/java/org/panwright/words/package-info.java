/**
 * Every sentence and label a person reads, for window, print and command line alike.
 *
 * <p>One small class for each feature, static methods and constants only; none holds state. Plain
 * British English, sentence case. Knows {@code analysis}, {@code swatch}, {@code kit}, {@code
 * paint} and {@code colour}; it knows no control and no page.
 */
package org.panwright.words;
