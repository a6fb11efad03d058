/**
 * Judging a lineup: everything that is known of it, with a cure for each finding that has one.
 *
 * <p>{@link org.panwright.analysis.judge.Judge} is the door, {@link
 * org.panwright.analysis.judge.Judgement} what comes out. Inside, {@code Remedies} looks for the
 * exchange of one paint that cures a finding and {@code Trials} tries it by judging the lineup as
 * it would be.
 */
package org.panwright.analysis.judge;
