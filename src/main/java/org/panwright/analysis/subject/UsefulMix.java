package org.panwright.analysis.subject;

import java.util.Optional;
import org.panwright.colour.Lab;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Wash;

/**
 * A mix worth having at hand.
 *
 * @param lab its dry colour, CIELAB under D65
 * @param subject the name of the subject colour it is for, if any
 */
public record UsefulMix(Recipe recipe, Wash wash, Lab lab, Optional<String> subject) {}
