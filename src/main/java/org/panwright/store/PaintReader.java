package org.panwright.store;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.panwright.colour.Bands;
import org.panwright.colour.Spectrum;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.paint.Granulation;
import org.panwright.paint.Handling;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Staining;
import org.panwright.paint.Transparency;

/** Reads the paints of a shelf. */
final class PaintReader {
  /** Handling of a paint nothing is known of: the middle of each scale. */
  private static final Handling MIDDLING =
      new Handling(
          Transparency.SEMI_TRANSPARENT, Staining.MEDIUM, Granulation.NONE, Lightfastness.UNRATED);

  private static final double MOST = 1e6;
  private static final double SHARE_TOLERANCE = 1e-6;

  private final Reading reading;
  private final PigmentLibrary library;
  private final Set<String> taken = new HashSet<>();
  private Set<String> everyId = new HashSet<>();

  PaintReader(Reading reading, PigmentLibrary library) {
    this.reading = reading;
    this.library = library;
  }

  List<Paint> paints(Field list) throws BadFieldException {
    everyId = list.isPresent() ? Reading.ids(list.list()) : Set.of();
    return reading.parts(Address.KIT.child("shelf"), list, this::paint);
  }

  private Paint paint(Field entry) throws BadFieldException {
    entry.group();
    String id = reading.id(entry.at("id"), taken, everyId, "paint");
    Address here = Address.KIT.child("shelf").entry("paints", id);
    List<PigmentShare> pigments = pigments(here, entry.at("pigments"));
    Optional<Optics> measured =
        reading.optional(
            here,
            entry.at("optics"),
            field -> optics(here.child("optics"), field),
            Optional.empty());
    if (measured.isEmpty()) {
      requireKnown(pigments, entry.at("pigments"));
    }
    Handling usual = library.usualHandling(pigments).orElse(MIDDLING);
    Paint paint =
        new Paint(
            id,
            reading.required(here, entry.at("name"), Field::name, codes(pigments)),
            reading.optional(here, entry.at("maker"), Field::text, ""),
            pigments,
            reading.optional(
                here, entry.at("handling"), f -> handling(here.child("handling"), f, usual), usual),
            reading.optional(
                here, entry.at("ownership"), f -> f.word(Ownership.class), Ownership.OWNED),
            measured,
            reading.optional(here, entry.at("note"), Field::text, ""),
            new SwatchbookReader(reading, here).book(entry, this::optics));
    reading.keepRest(here, entry);
    taken.add(id);
    return paint;
  }

  private static String codes(List<PigmentShare> pigments) {
    return String.join(" + ", pigments.stream().map(p -> p.pigment().code()).toList());
  }

  private List<PigmentShare> pigments(Address paint, Field list) throws BadFieldException {
    List<Field> entries = list.list();
    if (entries.isEmpty()) {
      throw list.fault(new FieldFault.NothingInList());
    }
    Repeats repeats = new Repeats();
    List<PigmentName> names = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    boolean anyGiven = false;
    for (Field entry : entries) {
      PigmentName name = pigmentName(entry.group());
      names.add(name);
      Field share = entry.at("share");
      anyGiven |= share.isPresent();
      shares.add(share.isPresent() ? share.positive(MOST) : 1.0);
      reading.keepRest(paint.entry("pigments", repeats.mark(name.toString())), entry);
    }
    double sum = shares.stream().mapToDouble(Double::doubleValue).sum();
    boolean whole = Math.abs(sum - 1) <= SHARE_TOLERANCE;
    if (!whole && anyGiven) {
      reading.mended(list, new FieldFault.SharesSum(sum), "");
    }
    List<PigmentShare> pigments = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      pigments.add(new PigmentShare(names.get(i), whole ? shares.get(i) : shares.get(i) / sum));
    }
    return pigments;
  }

  private static PigmentName pigmentName(Field entry) throws BadFieldException {
    Field code = entry.at("code");
    String text = code.name().strip();
    if (!PigmentName.isCode(text)) {
      throw code.fault(new FieldFault.NoPigmentName(text));
    }
    Field variant = entry.at("variant");
    return new PigmentName(text, variant.isPresent() ? variant.text() : "");
  }

  private void requireKnown(List<PigmentShare> pigments, Field list) throws BadFieldException {
    for (int i = 0; i < pigments.size(); i++) {
      PigmentName name = pigments.get(i).pigment();
      if (library.find(name).isEmpty()) {
        throw list.list().get(i).at("code").fault(new FieldFault.UnknownPigment(name.toString()));
      }
    }
  }

  private Handling handling(Address here, Field group, Handling usual) throws BadFieldException {
    group.group();
    Handling handling =
        new Handling(
            reading.optional(
                here,
                group.at("transparency"),
                f -> f.word(Transparency.class),
                usual.transparency()),
            reading.optional(
                here, group.at("staining"), f -> f.word(Staining.class), usual.staining()),
            reading.optional(
                here, group.at("granulation"), f -> f.word(Granulation.class), usual.granulation()),
            reading.optional(
                here,
                group.at("lightfastness"),
                f -> f.word(Lightfastness.class),
                usual.lightfastness()));
    reading.keepRest(here, group);
    return handling;
  }

  private Optional<Optics> optics(Address here, Field group) throws BadFieldException {
    group.group();
    Optics optics =
        new Optics(
            Spectrum.of(group.at("absorption").numbers(Bands.COUNT, 0, MOST)),
            Spectrum.of(group.at("scattering").numbers(Bands.COUNT, 0, MOST)),
            reading.optional(here, group.at("gloss"), f -> f.number(0, MOST), 0.0),
            group.at("source").word(OpticsSource.class),
            group.at("expectedError").positive(Math.nextDown(100)));
    reading.keepRest(here, group);
    return Optional.of(optics);
  }
}
