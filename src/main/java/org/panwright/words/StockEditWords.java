package org.panwright.words;

import org.panwright.kit.Kit;
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
      return e.wells().size() == 1
          ? "fill " + well(before, e.wells().get(0).boxId(), e.wells().get(0).wellId())
          : "fill %d wells".formatted(e.wells().size());
    } else if (edit instanceof StockEdit.SetFilled e) {
      return (e.now().isPresent() ? "say what is in " : "clean out ")
          + well(before, e.boxId(), e.wellId());
    } else if (edit instanceof StockEdit.AddSharedBox e) {
      return "add box " + e.box().name();
    } else if (edit instanceof StockEdit.WearDown e) {
      return "use the box for " + e.occasion();
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
