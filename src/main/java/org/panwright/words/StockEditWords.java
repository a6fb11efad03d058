package org.panwright.words;

import java.util.ArrayList;
import java.util.List;
import org.panwright.kit.FilledWell;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;
import org.panwright.kit.StockEdit;
import org.panwright.kit.Well;
import org.panwright.paint.Paint;

/** What an edit of tubes, pans and filled wells does, in a few words that follow "Undo:". */
final class StockEditWords {
  private StockEditWords() {}

  static String of(StockEdit edit, Kit before) {
    if (edit instanceof StockEdit.AddTube e) {
      return "add a tube of " + paint(before, e.tube().paintId());
    } else if (edit instanceof StockEdit.ChangeTube e) {
      return "change the tube of " + paint(before, e.tube().paintId());
    } else if (edit instanceof StockEdit.RemoveTube e) {
      return before
          .stock()
          .tube(e.tubeId())
          .map(tube -> "remove the tube of " + paint(before, tube.paintId()))
          .orElse("remove a tube");
    } else if (edit instanceof StockEdit.FillWells e) {
      List<FilledWell> pans = new ArrayList<>(e.wells());
      pans.addAll(e.aside());
      return pans.size() == 1
          ? "fill " + well(before, pans.get(0).boxId(), pans.get(0).wellId())
          : "fill %d wells".formatted(pans.size());
    } else if (edit instanceof StockEdit.ExchangePans e) {
      return e.pans().size() == 1
          ? "exchange the pan of " + well(before, e.pans().get(0).boxId(), e.pans().get(0).wellId())
          : "exchange %d pans".formatted(e.pans().size());
    } else if (edit instanceof StockEdit.CleanAside e) {
      return "clean out the pan of " + paint(before, e.paintId());
    } else if (edit instanceof StockEdit.SetFilled e) {
      return (e.now().isPresent() ? "say what is in " : "clean out ")
          + well(before, e.boxId(), e.wellId());
    } else if (edit instanceof StockEdit.AddSharedBox e) {
      return "add box " + e.box().name();
    } else if (edit instanceof StockEdit.WearDown e) {
      return "take the paint of %s out of the wells"
          .formatted(before.outing(e.outingId()).map(Outing::name).orElse("an outing"));
    }
    return ofPractice(edit);
  }

  private static String ofPractice(StockEdit edit) {
    if (edit instanceof StockEdit.SetCurrency) {
      return "change the currency";
    } else if (edit instanceof StockEdit.SetPans) {
      return "change the kinds of pans";
    } else if (edit instanceof StockEdit.SetPractice) {
      return "change how pans are filled";
    } else if (edit instanceof StockEdit.SetTolerance) {
      return "change how exactly pans must fit";
    }
    throw new IllegalArgumentException("no words for edit " + edit);
  }

  private static String paint(Kit kit, String id) {
    return kit.shelf().find(id).map(Paint::name).orElse("a paint");
  }

  private static String well(Kit kit, String boxId, String wellId) {
    return kit.box(boxId)
        .flatMap(box -> box.find(wellId))
        .map(Well::label)
        .map(label -> "well " + label)
        .orElse("a well");
  }
}
