/**
 * The colours some paints can mix: hue ring and reach, counted on one fixed net of mixes.
 *
 * <p>Read {@link org.panwright.analysis.reach.Net} (which mixes are counted), {@link
 * org.panwright.analysis.reach.NetWalk} (makes them, one after the other), {@link
 * org.panwright.analysis.reach.Ring} and {@link org.panwright.analysis.reach.Reach} (what is
 * gathered on the way), then {@link org.panwright.analysis.reach.HueArc} (gaps between two rings).
 * Everything else in {@code analysis} may build on this package; it knows none of the others.
 */
package org.panwright.analysis.reach;
