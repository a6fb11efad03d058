package org.panwright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.panwright.kit.Kit;
import org.panwright.paint.Optics;
import org.panwright.paint.Paint;
import org.panwright.paint.Pigment;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;
import org.panwright.words.CommandWords;

/**
 * Reads the parts of a mix: {@code NAME} or {@code NAME:PARTS}, where the name is that of a paint
 * of the kit or a Colour Index name, in capitals or not.
 *
 * <p>Names of pigments hold colons themselves, so the longest known name wins: {@code PB15:3} is
 * one part of that pigment, {@code PB15:3:2} two parts of it, {@code PB29:2} two parts of PB29.
 */
final class PartReader {
  private static final Pattern NUMBER = Pattern.compile("\\d{1,6}([.,]\\d{1,6})?");

  private final PigmentLibrary library;
  private final List<Paint> paints;

  /** Knows the pigments of the library and, if there is a kit, the paints of its shelf. */
  PartReader(PigmentLibrary library, Optional<Kit> kit) {
    this.library = library;
    this.paints = kit.map(k -> k.shelf().paints()).orElse(List.of());
  }

  /** The parts of a mix, each paint once. */
  List<Part> readAll(List<String> words) throws BadUseException {
    List<Part> parts = new ArrayList<>();
    for (String word : words) {
      Part part = read(word);
      int same = parts.stream().map(Part::name).toList().indexOf(part.name());
      if (same < 0) {
        parts.add(part);
      } else {
        parts.set(same, parts.get(same).plus(part.parts()));
      }
    }
    return parts;
  }

  private Part read(String word) throws BadUseException {
    Optional<Part> whole = named(word, 1);
    if (whole.isPresent()) {
      return whole.get();
    }
    int colon = word.lastIndexOf(':');
    String name = colon < 0 ? word : word.substring(0, colon);
    Optional<Part> known = named(name, 1);
    if (colon >= 0 && known.isPresent()) {
      return known.get().withParts(number(word, colon + 1));
    }
    throw new BadUseException(
        paints.isEmpty() ? CommandWords.unknownPigment(name) : CommandWords.unknownPaint(name));
  }

  private static double number(String word, int from) throws BadUseException {
    String digits = word.substring(from);
    if (NUMBER.matcher(digits).matches()) {
      double parts = Double.parseDouble(digits.replace(',', '.'));
      if (parts > 0) {
        return parts;
      }
    }
    throw new BadUseException(CommandWords.badParts(word, digits));
  }

  private Optional<Part> named(String name, double parts) {
    String wanted = name.strip();
    for (Paint paint : paints) {
      if (paint.name().equalsIgnoreCase(wanted)) {
        return Optional.of(
            new Part(paint.name(), paint.optics(library), paint.swatchbook().dryingShift(), parts));
      }
    }
    return pigment(wanted)
        .map(pigment -> new Part(pigment.toString(), optics(pigment), Optional.empty(), parts));
  }

  private Optional<PigmentName> pigment(String wanted) {
    for (Pigment pigment : library.pigments()) {
      if (pigment.name().toString().equalsIgnoreCase(wanted)) {
        return Optional.of(pigment.name());
      }
    }
    // "PR101" alone means the first of its kinds.
    return library.pigments().stream()
        .map(Pigment::name)
        .filter(name -> name.code().equalsIgnoreCase(wanted))
        .findFirst();
  }

  private Optics optics(PigmentName pigment) {
    return library.estimate(List.of(new PigmentShare(pigment, 1)));
  }
}
