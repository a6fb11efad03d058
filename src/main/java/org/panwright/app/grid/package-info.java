/** The mix grid: every pair of the lineup's paints, in the two readings painters paint by hand. */
package org.panwright.app.grid;
