package org.panwright.app.page;

import java.util.OptionalDouble;
import org.panwright.swatch.coat.Reading;

/**
 * A row of a file of readings, and what it is taken for.
 *
 * @param load of the coat, 1 = the paint's masstone coat; empty if the file does not say
 */
record ChosenRow(Reading reading, CoatRole role, OptionalDouble load) {}
