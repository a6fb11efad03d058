package org.panwright.swatch.grid;

import java.util.OptionalInt;
import org.panwright.colour.Lab;

/**
 * A painted cell beside the predicted one.
 *
 * @param predicted by what all agreeing cells teach: at the thickness that comes nearest to what
 *     was painted, or, where it disagrees, at the usual one of the agreeing cells
 * @param distance CIEDE2000 between painted and predicted
 * @param load all paint per area in it, as far as it can be told; the usual one where it disagrees
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
