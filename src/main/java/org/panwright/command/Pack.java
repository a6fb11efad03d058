package org.panwright.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import org.panwright.analysis.outing.OutingDay;
import org.panwright.analysis.outing.PackingNeeds;
import org.panwright.analysis.outing.PaintUse;
import org.panwright.kit.CheckItem;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.FileProblemException;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.words.OutingWords;
import org.panwright.words.PackingWords;

/** {@code pack KIT --outing NAME [--json]}: what an outing takes and what is still to pack. */
final class Pack implements Command {
  private static final String NAME = "pack";

  @Override
  public void run(List<String> words, PrintStream out, PrintStream err)
      throws BadUseException, FileProblemException {
    Arguments arguments = Arguments.of(NAME, words, Set.of("json"), Set.of("outing"));
    if (arguments.plain().size() != 1) {
      throw new BadUseException(OutingWords.packWantsOneKit(arguments.plain().size()));
    }
    String name = arguments.required("outing");
    PigmentLibrary library = PigmentLibraryReader.read();
    Kit kit = OpenKit.at(arguments.plain().get(0), library, err);
    Outing outing = outing(kit, name);
    PackingNeeds needs = PackingNeeds.of(kit, outing, library, () -> false);
    OutingDay day = OutingDay.of(outing.date(), LocalDate.now(ZoneId.systemDefault()));
    out.println(
        arguments.has("json")
            ? Json.text(json(kit, outing, needs, day))
            : OutingWords.pack(kit, outing, needs, day));
  }

  /** The outing of this name, capitals counting only where two names differ by nothing else. */
  private static Outing outing(Kit kit, String name) throws BadUseException {
    return kit.outings().stream()
        .filter(outing -> outing.name().equals(name))
        .findFirst()
        .or(() -> kit.outings().stream().filter(o -> o.name().equalsIgnoreCase(name)).findFirst())
        .orElseThrow(() -> new BadUseException(OutingWords.unknownOuting(name, kit)));
  }

  private static ObjectNode json(Kit kit, Outing outing, PackingNeeds needs, OutingDay day) {
    ObjectNode node = Json.object();
    node.put("kit", kit.name());
    node.put("outing", outing.name());
    node.put("date", outing.date().map(LocalDate::toString).orElse(null));
    node.put("dateNote", OutingWords.dayNote(day));
    node.put("place", outing.place());
    node.put("lineup", outing.lineupId().flatMap(kit::lineup).map(Lineup::name).orElse(null));
    node.put("hours", outing.hours());
    node.put("sheets", needs.sheets());
    node.put("spareSheets", needs.spareSheets());
    node.putObject("sheetSize")
        .put("widthMm", needs.sheetSize().widthMm())
        .put("heightMm", needs.sheetSize().heightMm());
    node.put("paintMl", Json.rounded(needs.paintMl(), 3));
    node.set("paints", paints(kit, needs));
    node.put("waterMl", needs.waterMl());
    node.put("dirtyMl", needs.dirtyMl());
    node.put("cups", needs.cups());
    node.put("cupFillings", Json.rounded(needs.cupFillings(), 2));
    node.put("washBrushMm", needs.washBrushMm());
    node.put("wipes", needs.wipes());
    ArrayNode list = node.putArray("checklist");
    for (CheckItem item : PackingWords.checklist(outing)) {
      list.addObject()
          .put("text", item.text())
          .put("amount", PackingWords.amount(item, needs, kit))
          .put("note", item.note())
          .put("ticked", item.ticked());
    }
    ArrayNode cautions = node.putArray("cautions");
    PackingWords.cautions(needs, kit).forEach(cautions::add);
    return node;
  }

  private static ArrayNode paints(Kit kit, PackingNeeds needs) {
    ArrayNode paints = Json.array();
    for (PaintUse use : needs.paints()) {
      ObjectNode node = paints.addObject();
      node.put("paint", kit.shelf().find(use.paintId()).map(Paint::name).orElse(use.paintId()));
      node.put("useMl", Json.rounded(use.useMl(), 4));
      node.put("aboardMl", Json.rounded(use.aboardMl(), 3));
      if (use.useMl() > 0) {
        node.put("outings", Json.rounded(use.outings(), 1));
      } else {
        node.putNull("outings");
      }
    }
    return paints;
  }
}
