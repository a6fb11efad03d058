package org.panwright.store;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.panwright.kit.CheckItem;
import org.panwright.kit.Outing;
import org.panwright.kit.PackingRates;
import org.panwright.kit.SheetSize;
import org.panwright.kit.SubjectColour;

/** Writes outings; what is as usual is left out. */
final class OutingWriter {
  private final KitWriter kit;

  OutingWriter(KitWriter kit) {
    this.kit = kit;
  }

  ObjectNode outing(Address here, Outing outing) {
    ObjectNode node = KitWriter.group();
    node.put("id", outing.id());
    node.put("name", outing.name());
    outing.date().ifPresent(date -> node.put("date", date.toString()));
    KitWriter.putText(node, "place", outing.place());
    outing.lineupId().ifPresent(id -> node.put("lineup", id));
    node.put("hours", outing.hours());
    node.put("sheets", outing.sheets());
    Address size = here.child("sheetSize");
    if (!outing.sheetSize().equals(SheetSize.A5) || kit.isNeeded(size)) {
      node.set("sheetSize", sheetSize(size, outing.sheetSize()));
    }
    Repeats repeats = new Repeats();
    node.set(
        "subjects",
        kit.list(
            here,
            "subjects",
            outing.subjects(),
            subject -> repeats.mark(subject.name()),
            this::subject));
    Address rates = here.child("rates");
    if (!outing.rates().equals(PackingRates.USUAL) || kit.isNeeded(rates)) {
      node.set("rates", rates(rates, outing.rates()));
    }
    outing.checklist().ifPresent(items -> node.set("checklist", checklist(here, items)));
    if (outing.paintTaken()) {
      node.put("paintTaken", true);
    }
    return kit.finish(here, node);
  }

  private ObjectNode sheetSize(Address here, SheetSize size) {
    ObjectNode node = KitWriter.group();
    node.put("widthMm", size.widthMm());
    node.put("heightMm", size.heightMm());
    return kit.finish(here, node);
  }

  private ObjectNode rates(Address here, PackingRates rates) {
    ObjectNode node = KitWriter.group();
    node.put("paintMlPerA5", rates.paintMlPerA5());
    node.put("waterMlPerHour", rates.waterMlPerHour());
    node.put("waterMlPerA5", rates.waterMlPerA5());
    node.put("cups", rates.cups());
    node.put("cupMl", rates.cupMl());
    node.put("spareSheets", rates.spareSheets());
    node.put("wipesPerSheet", rates.wipesPerSheet());
    return kit.finish(here, node);
  }

  private ArrayNode checklist(Address here, List<CheckItem> items) {
    return kit.list(here, "checklist", items, CheckItem::id, this::checkItem);
  }

  private ObjectNode checkItem(Address here, CheckItem item) {
    ObjectNode node = KitWriter.group();
    node.put("id", item.id());
    node.put("text", item.text());
    KitWriter.putText(node, "note", item.note());
    if (item.ticked()) {
      node.put("ticked", true);
    }
    item.supply().ifPresent(supply -> node.put("supply", Spelling.of(supply)));
    return kit.finish(here, node);
  }

  private ObjectNode subject(Address here, SubjectColour subject) {
    ObjectNode node = KitWriter.group();
    node.put("name", subject.name());
    ObjectNode lab = KitWriter.group();
    lab.put("l", subject.lab().l());
    lab.put("a", subject.lab().a());
    lab.put("b", subject.lab().b());
    node.set("lab", kit.finish(here.child("lab"), lab));
    if (subject.share() > 0) {
      node.put("share", subject.share());
    }
    KitWriter.putText(node, "photo", subject.photo());
    return kit.finish(here, node);
  }
}
