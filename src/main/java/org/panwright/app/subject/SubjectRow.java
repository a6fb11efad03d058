package org.panwright.app.subject;

import java.util.Optional;
import org.panwright.analysis.subject.Match;
import org.panwright.kit.SubjectColour;

/**
 * A subject colour and how near it can be come to.
 *
 * @param colour the colour
 * @param box the nearest mix of the lineup; empty if there is no paint in it
 * @param shelf the nearest mix of all owned paints, if it is nearer than that of the box
 */
record SubjectRow(SubjectColour colour, Optional<Match> box, Optional<Match> shelf) {}
