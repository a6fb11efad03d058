/**
 * Proposing lineups from a shelf: the conditions, the search for the best, and the reasons.
 *
 * <p>{@link org.panwright.analysis.choose.Chooser} is the door: {@link
 * org.panwright.analysis.choose.Conditions} go in, a {@link org.panwright.analysis.choose.Choice}
 * of {@link org.panwright.analysis.choose.Proposal}s comes out. Inside, {@code Cover} keeps what
 * mixes attain as bits, {@code SwapSearch} finds a lineup of great worth, {@code LineupSearch}
 * finds the best by branch and bound with the bounds of {@code Farewell}; {@code Effort} counts
 * their work.
 */
package org.panwright.analysis.choose;
