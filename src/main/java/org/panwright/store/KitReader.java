package org.panwright.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.panwright.colour.Bands;
import org.panwright.colour.Spectrum;
import org.panwright.kit.Box;
import org.panwright.kit.FileProblem;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.PanKind;
import org.panwright.paint.Paper;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.Shelf;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/**
 * Reads a kit from the JSON tree of a file; the format is described in {@code docs/file-format.md}.
 *
 * <p>A kit opens as far as it can: a part that cannot be used is left out and kept for the next
 * save, a value that cannot be used is replaced, each with a notice. Only a tree whose frame makes
 * no sense is refused.
 */
final class KitReader {
  /** The version of the format this program writes. */
  static final int VERSION = 1;

  /** A kit as read, with what was noticed. */
  record Result(Kit kit, Keepsake keepsake, List<FileProblem> notices, boolean newer) {}

  private final PigmentLibrary library;

  KitReader(PigmentLibrary library) {
    this.library = library;
  }

  Result read(Path file, JsonNode tree) throws FileProblemException {
    Field root = Field.root(tree);
    if (!tree.isObject() || !tree.path("schemaVersion").isNumber() || !tree.has("shelf")) {
      throw new FileProblemException(new FileProblem.NotAKit(file));
    }
    Reading reading = new Reading(file);
    try {
      boolean newer = version(file, root.at("schemaVersion"), reading);
      Kit kit = kit(file, root, reading);
      Keepsake keepsake = KitWriter.withStandIns(kit, reading.keepsake());
      return new Result(kit, keepsake, reading.notices(), newer);
    } catch (BadFieldException e) {
      throw new FileProblemException(new FileProblem.BadField(file, e.path(), e.fault()), e);
    }
  }

  private static boolean version(Path file, Field field, Reading reading) throws BadFieldException {
    double version = field.number(1, Double.MAX_VALUE);
    if (version <= VERSION) {
      field.wholeNumber(1, VERSION);
      return false;
    }
    reading.notice(new FileProblem.Newer(file, field.node().asText(), VERSION));
    return true;
  }

  private Kit kit(Path file, Field root, Reading reading) throws BadFieldException {
    Field shelfField = root.at("shelf").group();
    Shelf shelf = new Shelf(new PaintReader(reading, library).paints(shelfField.at("paints")));
    reading.keepRest(Address.KIT.child("shelf"), shelfField);
    Field stock = root.at("stock");
    List<PanKind> pans = pans(reading, stock);
    List<Box> boxes = new BoxReader(reading, Address.KIT, pans).boxes(root.at("boxes"));
    List<Lineup> lineups = new LineupReader(reading, shelf, boxes).lineups(root.at("lineups"));
    Kit kit =
        new Kit(
            reading.required(Address.KIT, root.at("name"), Field::name, stem(file)),
            shelf,
            boxes,
            lineups,
            new OutingReader(reading, lineups).outings(root.at("outings")),
            reading.optional(Address.KIT, root.at("paper"), f -> paper(reading, f), Paper.WHITE),
            reading.optional(
                Address.KIT, root.at("washes"), f -> washes(reading, f), WashStrengths.USUAL),
            reading.optional(Address.KIT, root.at("note"), Field::text, ""),
            new StockReader(reading, shelf, boxes, pans).stock(stock));
    reading.keepRest(Address.KIT, root);
    return kit;
  }

  private static List<PanKind> pans(Reading reading, Field stock) throws BadFieldException {
    return stock.isPresent()
        ? new PanReader(reading, Address.KIT.child("stock")).pans(stock.group().at("pans"))
        : PanKind.USUAL;
  }

  /** The file's name without its endings. */
  private static String stem(Path file) {
    String name = file.getFileName() == null ? "" : file.getFileName().toString();
    int end = name.toLowerCase(Locale.ROOT).indexOf(".kit.json");
    String stem = end > 0 ? name.substring(0, end) : name;
    return stem.isBlank() ? "kit" : stem;
  }

  private static Paper paper(Reading reading, Field group) throws BadFieldException {
    group.group();
    Paper paper =
        new Paper(
            group.at("name").name(),
            Spectrum.of(group.at("reflectance").numbers(Bands.COUNT, 0.05, 1)));
    reading.keepRest(Address.KIT.child("paper"), group);
    return paper;
  }

  private static WashStrengths washes(Reading reading, Field group) throws BadFieldException {
    group.group();
    List<Double> loads = new ArrayList<>();
    double previous = Double.POSITIVE_INFINITY;
    for (Wash wash : Wash.values()) {
      double load = group.at(Spelling.of(wash)).positive(4);
      if (load >= previous) {
        throw group.fault(new FieldFault.NotFalling());
      }
      loads.add(load);
      previous = load;
    }
    reading.keepRest(Address.KIT.child("washes"), group);
    return new WashStrengths(loads);
  }
}
