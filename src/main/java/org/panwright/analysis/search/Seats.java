package org.panwright.analysis.search;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.panwright.kit.Box;
import org.panwright.kit.Edit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;

/** Where the paints of a lineup sit, and the edits that bring one in or out. */
public record Seats(Box box, Lineup lineup) {
  /** The edit that puts a paint into the first empty well, pans before dabs, if there is one. */
  Optional<Edit> placeInEmptyWell(String paintId) {
    return box.wells().stream()
        .filter(well -> lineup.in(well.id()).isEmpty())
        .min(Comparator.comparing(well -> well.kind() == WellKind.DAB))
        .map(well -> new Edit.PlacePaint(lineup.id(), well.id(), paintId));
  }

  /** The edit that puts a paint into the well of another, the last one if that has several. */
  public Edit placeInWellOf(String leavingId, String paintId) {
    List<Well> wells = wellsOf(leavingId);
    return new Edit.PlacePaint(lineup.id(), wells.get(wells.size() - 1).id(), paintId);
  }

  /** The edit that empties the well of a paint, if it sits in exactly one. */
  public Optional<Edit> empty(String paintId) {
    return sitsOnce(paintId)
        ? Optional.of(new Edit.EmptyWell(lineup.id(), wellsOf(paintId).get(0).id()))
        : Optional.empty();
  }

  /** Whether a paint sits in exactly one well, so that one edit can take it out. */
  public boolean sitsOnce(String paintId) {
    return wellsOf(paintId).size() == 1;
  }

  /** The first paint that sits in more than one well: it can spare one at no loss. */
  Optional<String> doubled() {
    return lineup.paintIds(box).stream().filter(id -> wellsOf(id).size() > 1).findFirst();
  }

  private List<Well> wellsOf(String paintId) {
    return box.wells().stream()
        .filter(well -> lineup.in(well.id()).filter(f -> f.paintId().equals(paintId)).isPresent())
        .toList();
  }
}
