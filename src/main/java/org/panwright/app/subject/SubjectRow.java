package org.panwright.app.subject;

import java.util.Optional;
import org.panwright.analysis.subject.Match;
import org.panwright.kit.SubjectColour;
import org.panwright.mixing.Trust;

/**
 * A subject colour and how near it can be come to.
 *
 * @param colour the colour
 * @param box the nearest mix of the lineup; empty if there is no paint in it
 * @param shelf the nearest mix of all owned paints, if it is nearer than that of the box
 */
record SubjectRow(SubjectColour colour, Optional<Near> box, Optional<Near> shelf) {
  /** A mix and how far its colour can be trusted. */
  record Near(Match match, Trust trust) {}
}
