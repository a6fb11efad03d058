/**
 * Tables of paints, from and for other programs: what a table holds, and what taking it in would
 * do.
 */
package org.panwright.kit.table;
