package org.panwright.store;

import org.panwright.colour.Srgb;

/** A colour with the name it is to go by in a file for other programs. */
public record NamedColour(String name, Srgb srgb) {}
