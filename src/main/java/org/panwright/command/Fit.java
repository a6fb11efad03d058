package org.panwright.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.panwright.analysis.arrange.FitCheck;
import org.panwright.kit.Box;
import org.panwright.kit.Kit;
import org.panwright.kit.PanKind;
import org.panwright.kit.Well;
import org.panwright.store.FileProblemException;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.words.FillCommandWords;
import org.panwright.words.FitWords;

/** {@code fit KIT [--json]}: whether the pans fit the wells of every box. */
final class Fit implements Command {
  private static final String NAME = "fit";

  @Override
  public void run(List<String> words, PrintStream out, PrintStream err)
      throws BadUseException, FileProblemException {
    Arguments arguments = Arguments.of(NAME, words, Set.of("json"), Set.of());
    if (arguments.plain().size() != 1) {
      throw new BadUseException(FillCommandWords.wantsOneKit(NAME, arguments.plain().size()));
    }
    Kit kit = OpenKit.at(arguments.plain().get(0), PigmentLibraryReader.read(), err);
    if (kit.boxes().isEmpty()) {
      throw new BadUseException(FillCommandWords.noBox(kit.name()));
    }
    out.println(arguments.has("json") ? Json.text(json(kit)) : text(kit));
  }

  private static String text(Kit kit) {
    List<String> lines = new ArrayList<>();
    for (Box box : kit.boxes()) {
      FitCheck check = FitCheck.of(box, kit.stock());
      lines.add(box.name());
      FitWords.sentences(check, box, kit.stock()).forEach(line -> lines.add("  " + line));
      check.rows().forEach(row -> lines.add("  " + FitWords.row(row, kit.stock())));
      lines.add("");
    }
    lines.add(FitWords.USUAL);
    return String.join("\n", lines);
  }

  private static ObjectNode json(Kit kit) {
    ObjectNode node = Json.object();
    node.put("kit", kit.name());
    ArrayNode boxes = node.putArray("boxes");
    for (Box box : kit.boxes()) {
      FitCheck check = FitCheck.of(box, kit.stock());
      ObjectNode entry = Json.object();
      entry.put("box", box.name());
      ArrayNode wells = entry.putArray("wells");
      check.wells().forEach(fit -> wells.add(well(kit, box, fit)));
      ArrayNode rows = entry.putArray("rows");
      check.rows().forEach(row -> rows.add(row(kit, row)));
      boxes.add(entry);
    }
    return node;
  }

  private static ObjectNode well(Kit kit, Box box, FitCheck.WellFit fit) {
    ObjectNode node = Json.object();
    node.put("position", box.find(fit.wellId()).map(Well::label).orElseThrow());
    node.put("pan", pan(kit, fit.panId()));
    node.put("seat", fit.seat().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    node.put("lengthPlayMm", Json.rounded(fit.lengthPlayMm(), 2));
    node.put("widthPlayMm", Json.rounded(fit.widthPlayMm(), 2));
    if (fit.proudMm().isPresent()) {
      node.put("proudMm", Json.rounded(Math.max(0, fit.proudMm().getAsDouble()), 2));
    } else {
      node.putNull("proudMm");
    }
    node.put("largerThanBox", fit.largerThanBox());
    return node;
  }

  private static ObjectNode row(Kit kit, FitCheck.RowFit row) {
    ObjectNode node = Json.object();
    node.put("pan", pan(kit, row.panId()));
    node.put("inRow", row.upright());
    node.put("pressed", row.pressed());
    node.put("turned", row.turned());
    node.put("turnedPressed", row.turnedPressed());
    return node;
  }

  private static String pan(Kit kit, String id) {
    return kit.stock().pan(id).map(PanKind::name).orElseThrow();
  }
}
