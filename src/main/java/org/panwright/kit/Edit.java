package org.panwright.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.paint.Paint;
import org.panwright.paint.Paper;
import org.panwright.paint.WashStrengths;

/**
 * One thing the painter does to the kit; the only way a kit changes.
 *
 * <p>An edit is a value: it says what is to happen, {@link #apply} makes the kit in which it has
 * happened. An edit that names something the kit does not have throws {@link
 * IllegalArgumentException}. Its label for the undo menu is the business of {@code words}.
 */
public sealed interface Edit
    permits Edit.PlacePaint,
        Edit.MovePaint,
        Edit.EmptyWell,
        Edit.SetFill,
        Edit.AddPaint,
        Edit.ChangePaint,
        Edit.RemovePaint,
        Edit.AddBox,
        Edit.ChangeBox,
        Edit.RemoveBox,
        Edit.AddLineup,
        Edit.ChangeLineup,
        Edit.RemoveLineup,
        Edit.MuteFinding,
        Edit.TellFinding,
        Edit.SetCardMixes,
        Edit.SetWishes,
        Edit.AddOuting,
        Edit.ChangeOuting,
        Edit.SetSubjects,
        Edit.RemoveOuting,
        Edit.SetPaper,
        Edit.SetWashes,
        Edit.RenameKit,
        StockEdit,
        SwatchEdit,
        TableEdit {
  /** The kit after this edit. */
  Kit apply(Kit kit);

  /** Puts a paint into a well, in place of what is there. */
  record PlacePaint(String lineupId, String wellId, String paintId) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      Lineup lineup = lineup(kit, lineupId);
      Well well = well(kit, lineup, wellId);
      Filling filling = new Filling(paintId, usualFill(well));
      return kit.replacing(lineup.with(wellId, Optional.of(filling)));
    }
  }

  /** Moves what is in one well to another; what was there changes places with it. */
  record MovePaint(String lineupId, String fromWellId, String toWellId) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      Lineup lineup = lineup(kit, lineupId);
      Well from = well(kit, lineup, fromWellId);
      Well to = well(kit, lineup, toWellId);
      Optional<Filling> moved = lineup.in(fromWellId).map(f -> moved(f, from, to));
      Optional<Filling> displaced = lineup.in(toWellId).map(f -> moved(f, to, from));
      return kit.replacing(lineup.with(fromWellId, displaced).with(toWellId, moved));
    }

    /** In a dab place a paint is a dab; out of one it fills its well as any other. */
    private static Filling moved(Filling filling, Well from, Well to) {
      if (from.kind() == to.kind() || (from.kind() != WellKind.DAB && to.kind() != WellKind.DAB)) {
        return filling;
      }
      return new Filling(filling.paintId(), usualFill(to));
    }
  }

  /** Takes the paint out of a well. */
  record EmptyWell(String lineupId, String wellId) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      Lineup lineup = lineup(kit, lineupId);
      return kit.replacing(lineup.with(well(kit, lineup, wellId).id(), Optional.empty()));
    }
  }

  /** Changes how far a well is filled. */
  record SetFill(String lineupId, String wellId, Fill fill) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      Lineup lineup = lineup(kit, lineupId);
      well(kit, lineup, wellId);
      Optional<Filling> filled = lineup.in(wellId).map(f -> new Filling(f.paintId(), fill));
      return kit.replacing(lineup.with(wellId, filled));
    }
  }

  /** Puts a new paint on the shelf. */
  record AddPaint(Paint paint) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      return kit.withShelf(kit.shelf().with(paint));
    }
  }

  /** Changes what is known of a paint; its id stays. */
  record ChangePaint(Paint paint) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      requireIn("paint", paint.id(), kit.shelf().find(paint.id()));
      return kit.withShelf(kit.shelf().replacing(paint));
    }
  }

  /** Takes a paint off the shelf, out of every well, and its tubes out of the stock. */
  record RemovePaint(String paintId) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      requireIn("paint", paintId, kit.shelf().find(paintId));
      List<Lineup> without = new ArrayList<>();
      for (Lineup lineup : kit.lineups()) {
        Map<String, Filling> kept = new LinkedHashMap<>(lineup.fillings());
        kept.values().removeIf(filling -> filling.paintId().equals(paintId));
        without.add(lineup.withFillings(kept));
      }
      return kit.withLineups(without)
          .withStock(kit.stock().without(paintId))
          .withShelf(kit.shelf().without(paintId));
    }
  }

  /** Adds a box. */
  record AddBox(Box box) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      List<Box> more = new ArrayList<>(kit.boxes());
      more.add(box);
      return kit.withBoxes(more, kit.lineups());
    }
  }

  /** Changes a box; paints in wells it no longer has leave their lineups. */
  record ChangeBox(Box box) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      requireIn("box", box.id(), kit.box(box.id()));
      List<Lineup> fitting = new ArrayList<>();
      for (Lineup lineup : kit.lineups()) {
        Map<String, Filling> kept = new LinkedHashMap<>(lineup.fillings());
        if (lineup.boxId().equals(box.id())) {
          kept.keySet().removeIf(wellId -> box.find(wellId).isEmpty());
        }
        fitting.add(lineup.withFillings(kept));
      }
      return kit.withBoxes(
          kit.boxes().stream().map(b -> b.id().equals(box.id()) ? box : b).toList(), fitting);
    }
  }

  /** Removes a box with all lineups for it; outings lose those lineups. */
  record RemoveBox(String boxId) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      requireIn("box", boxId, kit.box(boxId));
      List<Lineup> kept = kit.lineups().stream().filter(l -> !l.boxId().equals(boxId)).toList();
      return freed(kit, kept)
          .withBoxes(kit.boxes().stream().filter(b -> !b.id().equals(boxId)).toList(), kept);
    }
  }

  /** Adds a lineup. */
  record AddLineup(Lineup lineup) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      List<Lineup> more = new ArrayList<>(kit.lineups());
      more.add(lineup);
      return kit.withLineups(more);
    }
  }

  /** Changes a lineup as a whole: its name or all its fillings. */
  record ChangeLineup(Lineup lineup) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      requireIn("lineup", lineup.id(), kit.lineup(lineup.id()));
      return kit.replacing(lineup);
    }
  }

  /** Removes a lineup; outings lose it. */
  record RemoveLineup(String lineupId) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      requireIn("lineup", lineupId, kit.lineup(lineupId));
      List<Lineup> kept = kit.lineups().stream().filter(l -> !l.id().equals(lineupId)).toList();
      return freed(kit, kept).withLineups(kept);
    }
  }

  /** Tells a finding about a lineup no more, for a reason. */
  record MuteFinding(String lineupId, String key, String reason) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      return kit.replacing(lineup(kit, lineupId).muting(new MutedFinding(key, reason)));
    }
  }

  /** Tells a muted finding about a lineup again. */
  record TellFinding(String lineupId, String key) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      Lineup lineup = lineup(kit, lineupId);
      requireIn("muted finding", key, lineup.mute(key));
      return kit.replacing(lineup.withoutMute(key));
    }
  }

  /** Puts mixes on a lineup's key card, or those worth having if empty. */
  record SetCardMixes(String lineupId, Optional<List<KeptMix>> mixes) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      return kit.replacing(lineup(kit, lineupId).withCardMixes(mixes));
    }
  }

  /** Changes what is asked of lineups proposed in place of one. */
  record SetWishes(String lineupId, LineupWishes wishes) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      return kit.replacing(lineup(kit, lineupId).withWishes(wishes));
    }
  }

  /** Adds an outing. */
  record AddOuting(Outing outing) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      List<Outing> more = new ArrayList<>(kit.outings());
      more.add(outing);
      return kit.withOutings(more);
    }
  }

  /** Changes an outing. */
  record ChangeOuting(Outing outing) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      requireIn("outing", outing.id(), kit.outing(outing.id()));
      return kit.withOutings(
          kit.outings().stream().map(o -> o.id().equals(outing.id()) ? outing : o).toList());
    }
  }

  /** Changes the colours of the place an outing goes to. */
  record SetSubjects(String outingId, List<SubjectColour> subjects) implements Edit {
    public SetSubjects {
      subjects = List.copyOf(subjects);
    }

    @Override
    public Kit apply(Kit kit) {
      requireIn("outing", outingId, kit.outing(outingId));
      return kit.withOutings(
          kit.outings().stream()
              .map(o -> o.id().equals(outingId) ? o.withSubjects(subjects) : o)
              .toList());
    }
  }

  /** Removes an outing. */
  record RemoveOuting(String outingId) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      requireIn("outing", outingId, kit.outing(outingId));
      return kit.withOutings(kit.outings().stream().filter(o -> !o.id().equals(outingId)).toList());
    }
  }

  /** Changes the paper everything is judged on. */
  record SetPaper(Paper paper) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      return kit.withPaper(paper);
    }
  }

  /** Changes the loads the washes stand for. */
  record SetWashes(WashStrengths washes) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      return kit.withWashes(washes);
    }
  }

  /** Gives the kit another name. */
  record RenameKit(String name) implements Edit {
    @Override
    public Kit apply(Kit kit) {
      return kit.withName(name);
    }
  }

  private static Lineup lineup(Kit kit, String id) {
    requireIn("lineup", id, kit.lineup(id));
    return kit.lineup(id).orElseThrow();
  }

  private static void requireIn(String what, String id, Optional<?> found) {
    if (found.isEmpty()) {
      throw new IllegalArgumentException("the kit has no " + what + " " + id);
    }
  }

  private static Fill usualFill(Well well) {
    return well.kind() == WellKind.DAB ? Fill.DAB : Fill.FULL;
  }

  private static Well well(Kit kit, Lineup lineup, String id) {
    return kit.boxOf(lineup)
        .find(id)
        .orElseThrow(() -> new IllegalArgumentException("the box has no well " + id));
  }

  /** The kit whose outings name only lineups in {@code kept}. */
  private static Kit freed(Kit kit, List<Lineup> kept) {
    return kit.withOutings(
        kit.outings().stream()
            .map(
                outing ->
                    outing.withLineup(
                        outing
                            .lineupId()
                            .filter(id -> kept.stream().anyMatch(l -> l.id().equals(id)))))
            .toList());
  }
}
