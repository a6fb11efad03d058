/**
 * What a lineup can and cannot mix: hue ring, reach, gaps, findings. Findings are numbers, no
 * sentences.
 *
 * <p>Read in this order: {@link org.panwright.analysis.Judge} (the door), {@link
 * org.panwright.analysis.Judgement}, {@link org.panwright.analysis.Ring}, {@link
 * org.panwright.analysis.Finding}.
 *
 * <p>Every analysis is a pure function of lineup, shelf optics and paper. Knows {@code colour},
 * {@code paint}, {@code mixing} and {@code kit}; the words for all this live in {@code words}.
 */
package org.panwright.analysis;
