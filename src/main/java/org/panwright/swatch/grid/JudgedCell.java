package org.panwright.swatch.grid;

import java.util.OptionalInt;
import org.panwright.colour.Lab;

/**
 * A painted cell beside the predicted one.
 *
 * @param predicted by what all agreeing cells teach
 * @param distance CIEDE2000 between painted and predicted
 * @param load all paint per area in it, as far as it can be told
 * @param secondShare the second paint's share by volume; 0 where one stands alone
 * @param partner the place, in the list of judged cells, of the one it was exchanged with
 */
public record JudgedCell(
    CellReading cell,
    Lab predicted,
    double distance,
    double load,
    double secondShare,
    CellVerdict verdict,
    OptionalInt partner) {}
