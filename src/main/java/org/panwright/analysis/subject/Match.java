package org.panwright.analysis.subject;

import org.panwright.colour.Lab;
import org.panwright.mixing.Recipe;
import org.panwright.paint.Wash;

/**
 * A recipe that comes near a colour.
 *
 * @param recipe small whole strength parts of at most three paints
 * @param wash the wash nearest to {@code load}
 * @param load the load at which it comes nearest, between the thinnest wash and the strongest
 * @param lab the dry colour it gives at that load, CIELAB under D65
 * @param deltaE its CIEDE2000 difference from the colour asked for
 */
public record Match(Recipe recipe, Wash wash, double load, Lab lab, double deltaE) {}
