/**
 * What mixing takes away: pairs that turn to mud, useful greys, and the darkest mix.
 *
 * <p>Read {@link org.panwright.analysis.mud.Mud} for chroma lost in pairs and {@link
 * org.panwright.analysis.mud.Dark} with {@link org.panwright.analysis.mud.DarkestMix} for darks.
 */
package org.panwright.analysis.mud;
