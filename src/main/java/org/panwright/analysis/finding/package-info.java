/**
 * What there is to tell about a lineup, as numbers: one record for each kind of finding.
 *
 * <p>Read {@link org.panwright.analysis.finding.Finding} and {@link
 * org.panwright.analysis.finding.FindingKind}. The records hold figures, ids and the edit that
 * would cure them, no sentences: those live in {@code words}. How they are found is in {@code
 * search}.
 */
package org.panwright.analysis.finding;
