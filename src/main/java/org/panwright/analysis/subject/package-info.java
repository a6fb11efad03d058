/**
 * The colours of a place: which mixes give them, and how a photo looks in some paints.
 *
 * <p>Read {@link org.panwright.analysis.subject.Recipes} and {@link
 * org.panwright.analysis.subject.Match}, then {@link org.panwright.analysis.subject.UsefulMixes}
 * (what is worth a line on the key card) and {@link org.panwright.analysis.subject.PaintedPhoto}.
 */
package org.panwright.analysis.subject;
