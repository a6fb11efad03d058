package org.panwright.analysis.finding;

import java.util.Optional;
import org.panwright.kit.Edit;

/**
 * An exchange of one paint that cures a finding or lessens it, and was tried: nothing worse comes
 * of it.
 *
 * @param leavingId the paint that leaves its well; empty if an empty well is filled
 * @param arrivingId the paint that comes; empty if one only leaves
 * @param apart how far the two are from each other: mean ΔE00 of masstone and of tint; 0 unless one
 *     takes the place of another
 * @param left what is left of the finding, see {@link Finding#extent}; 0 if it is gone
 * @param edit what does it
 */
public record Remedy(
    Optional<String> leavingId,
    Optional<String> arrivingId,
    double apart,
    double left,
    Edit edit) {}
