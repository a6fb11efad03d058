package org.panwright.app.share;

import org.panwright.app.box.BoxModel;
import org.panwright.app.grid.GridModel;
import org.panwright.app.ring.RingModel;

/**
 * What pictures are taken of: the same that the window shows.
 *
 * @param box the box with its lineup
 * @param grid the mix grid in its reading and wash
 * @param ring the hue ring
 */
public record Figures(BoxModel box, GridModel grid, RingModel ring) {}
