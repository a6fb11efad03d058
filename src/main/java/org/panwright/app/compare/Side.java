package org.panwright.app.compare;

import org.panwright.kit.Lineup;

/**
 * What stands on one side of a comparison: a lineup as it is, as it was, or as it would be.
 *
 * @param label what it is called
 * @param lineup with paints and wells the kit has now
 */
record Side(String label, Lineup lineup) {}
