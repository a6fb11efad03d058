/**
 * What an outing takes: paint, water, paper and tools, and what to refill before it.
 *
 * <p>Read {@link org.panwright.analysis.outing.PackingNeeds}, {@link
 * org.panwright.analysis.outing.Refill} and {@link org.panwright.analysis.outing.Wear}.
 */
package org.panwright.analysis.outing;
