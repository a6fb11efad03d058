/**
 * Two lineups side by side, and two lineups carried together.
 *
 * <p>Read {@link org.panwright.analysis.compare.Comparison}; {@link
 * org.panwright.analysis.compare.Move} is what it takes in the real box, {@link
 * org.panwright.analysis.compare.SubjectPair} how each meets a colour of the place, {@link
 * org.panwright.analysis.compare.LineupPair} what two boxes mix together.
 */
package org.panwright.analysis.compare;
