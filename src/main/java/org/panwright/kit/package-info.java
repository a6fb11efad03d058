/**
 * The painter's document: shelf, boxes, lineups, outings, paper and wash strengths; its edits and
 * history.
 *
 * <p>Read in this order: {@link org.panwright.kit.Kit}, {@link org.panwright.kit.Box} and {@link
 * org.panwright.kit.Well}, {@link org.panwright.kit.Lineup}, {@link org.panwright.kit.Edit}, {@link
 * org.panwright.kit.History}; then {@link org.panwright.kit.BoxPlan}, which draws plain boxes, and
 * {@link org.panwright.kit.FileProblem}, what can be wrong with a kit's file.
 *
 * <p>Knows {@code colour} and {@code paint}. No colour is computed here and nothing is read or
 * written.
 */
package org.panwright.kit;
