/**
 * What a lineup can and cannot do, as numbers: a package for each subject, no class here.
 *
 * <p>From the bottom up: {@code reach} (the colours paints mix) and {@code balance} (what kinds of
 * paint there are); {@code mud}; {@code worth} (what each paint earns); {@code finding} (what there
 * is to tell), {@code search} (how it is found), {@code judge} (the door: {@link
 * org.panwright.analysis.judge.Judge}); {@code compare}. Beside them {@code subject} (recipes),
 * {@code choose}, {@code arrange}, {@code fill} and {@code outing}. Each knows only packages named
 * before it in {@code docs/architecture.md}; there are no circles.
 *
 * <p>Every analysis is a pure function of kit, shelf optics and paper. Knows {@code colour}, {@code
 * paint}, {@code mixing} and {@code kit}; the words for all this live in {@code words}.
 */
package org.panwright.analysis;
