package org.panwright.app.page;

import org.panwright.swatch.coat.Reading;

/** A row of a file of readings, and what it is taken for. */
record ChosenRow(Reading reading, CoatRole role) {}
