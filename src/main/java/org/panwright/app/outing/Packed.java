package org.panwright.app.outing;

import org.panwright.analysis.outing.PackingNeeds;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;

/**
 * What one outing of a kit needs, together with what it was worked out from.
 *
 * @param kit the kit as it was
 * @param outing the outing as it was
 * @param needs its needs
 */
record Packed(Kit kit, Outing outing, PackingNeeds needs) {}
