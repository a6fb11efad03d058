/**
 * What a lineup can and cannot mix: hue ring, reach, gaps, findings. Findings are numbers, no
 * sentences.
 *
 * <p>Read in this order: {@link org.panwright.analysis.Judge} (the door), {@link
 * org.panwright.analysis.Judgement}, {@link org.panwright.analysis.Ring}, {@link
 * org.panwright.analysis.Reach}, {@link org.panwright.analysis.Finding}; then {@link
 * org.panwright.analysis.Comparison} for two lineups, {@link org.panwright.analysis.Chooser} for
 * the best one, {@link org.panwright.analysis.Arranger} for its wells and {@link
 * org.panwright.analysis.Recipes} for the mix that gives a colour. Inside, {@code Net} says which
 * mixes are counted, {@code NetWalk} makes them.
 *
 * <p>Every analysis is a pure function of lineup, shelf optics and paper. Knows {@code colour},
 * {@code paint}, {@code mixing} and {@code kit}; the words for all this live in {@code words}.
 */
package org.panwright.analysis;
