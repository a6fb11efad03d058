package org.panwright.words;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.panwright.kit.Edit;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.kit.StockEdit;
import org.panwright.kit.SwatchEdit;
import org.panwright.kit.TableEdit;
import org.panwright.kit.Well;
import org.panwright.paint.Paint;

/**
 * What an edit does, in a few words that follow "Undo:" and "Redo:".
 *
 * <p>Names are taken from the kit before the edit; what is no longer there is named by its kind.
 */
public final class EditWords {
  private EditWords() {}

  /** The words for an edit of {@code before}, for example "put yellow ochre into well 3". */
  public static String of(Edit edit, Kit before) {
    if (edit instanceof Edit.PlacePaint e) {
      return "put %s into %s"
          .formatted(paint(before, e.paintId()), well(before, e.lineupId(), e.wellId()));
    } else if (edit instanceof Edit.MovePaint e) {
      return "move %s to %s"
          .formatted(
              content(before, e.lineupId(), e.fromWellId()),
              well(before, e.lineupId(), e.toWellId()));
    } else if (edit instanceof Edit.EmptyWell e) {
      return "take %s out of %s"
          .formatted(
              content(before, e.lineupId(), e.wellId()), well(before, e.lineupId(), e.wellId()));
    } else if (edit instanceof Edit.SetFill e) {
      return "fill %s %s".formatted(well(before, e.lineupId(), e.wellId()), fill(e.fill()));
    } else if (edit instanceof Edit.AddPaint e) {
      return "add " + e.paint().name();
    } else if (edit instanceof Edit.ChangePaint e) {
      return "change " + paint(before, e.paint().id());
    } else if (edit instanceof Edit.RemovePaint e) {
      return "remove " + paint(before, e.paintId());
    }
    return ofSwatches(edit, before);
  }

  private static String ofSwatches(Edit edit, Kit before) {
    if (edit instanceof SwatchEdit.RecordSwatches e) {
      return "keep swatches of " + paints(before, e.coats().keySet());
    } else if (edit instanceof SwatchEdit.RemoveSwatch e) {
      return "remove a swatch of " + paint(before, e.paintId());
    } else if (edit instanceof SwatchEdit.UseOptics e) {
      boolean estimated = e.optics().values().stream().allMatch(Optional::isEmpty);
      return (estimated ? "estimate %s from pigments" : "use measured colours of %s")
          .formatted(paints(before, e.optics().keySet()));
    } else if (edit instanceof SwatchEdit.LearnPaints e) {
      return "learn %s from swatches".formatted(paints(before, e.learnt().optics().keySet()));
    } else if (edit instanceof SwatchEdit.GoBack e) {
      return "go back to former colours of " + paint(before, e.paintId());
    }
    return ofBoxOrLineup(edit, before);
  }

  /** The paint's name if it is one, their number otherwise. */
  private static String paints(Kit kit, Set<String> ids) {
    return ids.size() == 1 ? paint(kit, ids.iterator().next()) : ids.size() + " paints";
  }

  private static String ofBoxOrLineup(Edit edit, Kit before) {
    if (edit instanceof Edit.AddBox e) {
      return "add box " + e.box().name();
    } else if (edit instanceof Edit.ChangeBox e) {
      return "change box " + e.box().name();
    } else if (edit instanceof Edit.RemoveBox e) {
      return "remove " + before.box(e.boxId()).map(b -> "box " + b.name()).orElse("a box");
    } else if (edit instanceof Edit.AddLineup e) {
      return "add lineup " + e.lineup().name();
    } else if (edit instanceof Edit.ChangeLineup e) {
      return ofChangedLineup(e.lineup(), before);
    } else if (edit instanceof Edit.RemoveLineup e) {
      return "remove " + lineup(before, e.lineupId());
    }
    return ofTheRest(edit, before);
  }

  private static String ofChangedLineup(Lineup after, Kit before) {
    Optional<Lineup> known = before.lineup(after.id());
    boolean renamed = known.isPresent() && !known.get().name().equals(after.name());
    return renamed
        ? "rename lineup %s to %s".formatted(known.get().name(), after.name())
        : (isLaidAnew(after, known) ? "arrange lineup " : "change lineup ") + after.name();
  }

  /** Whether the same paints sit in the same wells in another order. */
  private static boolean isLaidAnew(Lineup after, Optional<Lineup> before) {
    return before.isPresent()
        && !before.get().fillings().equals(after.fillings())
        && before.get().fillings().keySet().equals(after.fillings().keySet())
        && sorted(before.get()).equals(sorted(after));
  }

  private static List<String> sorted(Lineup lineup) {
    return lineup.fillings().values().stream().map(Filling::paintId).sorted().toList();
  }

  private static String ofTheRest(Edit edit, Kit before) {
    if (edit instanceof Edit.MuteFinding) {
      return "mute a finding";
    } else if (edit instanceof Edit.TellFinding) {
      return "tell a finding again";
    } else if (edit instanceof Edit.SetCardMixes e) {
      return "change the mixes on the key card of " + lineup(before, e.lineupId());
    } else if (edit instanceof Edit.SetWishes e) {
      return "change what is asked of " + lineup(before, e.lineupId());
    } else if (edit instanceof Edit.SetSubjects e) {
      return "change the subject colours of " + outing(before, e.outingId());
    } else if (edit instanceof Edit.AddOuting e) {
      return "add outing " + e.outing().name();
    } else if (edit instanceof Edit.ChangeOuting e) {
      return OutingEditWords.ofChange(e.outing(), before);
    } else if (edit instanceof Edit.RemoveOuting e) {
      return "remove " + outing(before, e.outingId());
    } else if (edit instanceof Edit.SetPaper e) {
      return "paint on " + e.paper().name();
    } else if (edit instanceof Edit.SetWashes) {
      return "change the wash strengths";
    } else if (edit instanceof Edit.RenameKit e) {
      return "rename the kit to " + e.name();
    }
    if (edit instanceof TableEdit e) {
      return ShareWords.ofEdit(e);
    }
    if (edit instanceof StockEdit e) {
      return StockEditWords.of(e, before);
    }
    throw new IllegalArgumentException("no words for edit " + edit);
  }

  private static String paint(Kit kit, String id) {
    return kit.shelf().find(id).map(Paint::name).orElse("a paint");
  }

  private static String well(Kit kit, String lineupId, String wellId) {
    return kit.lineup(lineupId)
        .map(kit::boxOf)
        .flatMap(box -> box.find(wellId))
        .map(Well::label)
        .map(label -> "well " + label)
        .orElse("a well");
  }

  private static String content(Kit kit, String lineupId, String wellId) {
    return kit.lineup(lineupId)
        .flatMap(lineup -> lineup.in(wellId))
        .map(filling -> paint(kit, filling.paintId()))
        .orElse("nothing");
  }

  private static String lineup(Kit kit, String id) {
    return kit.lineup(id).map(l -> "lineup " + l.name()).orElse("a lineup");
  }

  private static String outing(Kit kit, String id) {
    return kit.outings().stream()
        .filter(o -> o.id().equals(id))
        .findFirst()
        .map(Outing::name)
        .map(name -> "outing " + name)
        .orElse("an outing");
  }

  private static String fill(Fill fill) {
    return switch (fill) {
      case FULL -> "to the top";
      case HALF -> "half";
      case DAB -> "with a dab";
    };
  }
}
