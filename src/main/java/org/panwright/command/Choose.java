package org.panwright.command;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.panwright.analysis.choose.Choice;
import org.panwright.analysis.choose.Chooser;
import org.panwright.analysis.choose.Conditions;
import org.panwright.analysis.choose.Proposal;
import org.panwright.kit.Kit;
import org.panwright.kit.Outing;
import org.panwright.kit.PaintRules;
import org.panwright.kit.SubjectColour;
import org.panwright.kit.Weights;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.FileProblemException;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.words.ChooseWords;

/**
 * {@code choose KIT --wells N [--dabs M] [--must PAINT,…] [--never PAINT,…] … [--json]}: proposes
 * lineups from the shelf.
 */
final class Choose implements Command {
  private static final String NAME = "choose";
  private static final Set<String> SWITCHES =
      Set.of("json", "single-pigment", "no-cadmium", "any-paint");
  private static final Set<String> VALUED =
      Set.of("wells", "dabs", "must", "never", "most", "lightfastness", "weights", "outing");

  @Override
  public void run(List<String> words, PrintStream out, PrintStream err)
      throws BadUseException, FileProblemException {
    Arguments arguments = Arguments.of(NAME, words, SWITCHES, VALUED);
    if (arguments.plain().size() != 1) {
      throw new BadUseException(ChooseWords.wantsOneKit(arguments.plain().size()));
    }
    int wells = number("wells", arguments.required("wells"), 0, Conditions.MOST);
    int dabs = number("dabs", arguments.value("dabs").orElse("0"), 0, Conditions.MOST);
    if (wells + dabs > Conditions.MOST) {
      throw new BadUseException(ChooseWords.tooManyPlaces(Conditions.MOST));
    }
    PigmentLibrary library = PigmentLibraryReader.read();
    Kit kit = OpenKit.at(arguments.plain().get(0), library, err);
    Conditions conditions = conditions(arguments, kit, wells, dabs);
    Choice choice = new Chooser(library).choose(kit, conditions, () -> false, progress -> {});
    if (!choice.contradictions().isEmpty()) {
      throw new BadUseException(
          choice.contradictions().stream()
              .map(contradiction -> ChooseWords.sentence(contradiction, kit))
              .collect(Collectors.joining(" ")));
    }
    out.println(arguments.has("json") ? Json.text(ChoiceJson.of(choice, kit)) : text(choice, kit));
  }

  private static Conditions conditions(Arguments arguments, Kit kit, int wells, int dabs)
      throws BadUseException {
    NamedPaints names = new NamedPaints(kit.shelf().paints());
    Optional<Integer> most = Optional.empty();
    if (arguments.has("most")) {
      most = Optional.of(number("most", arguments.required("most"), 1, Conditions.MOST));
    }
    Optional<Lightfastness> floor = Optional.empty();
    if (arguments.has("lightfastness")) {
      floor = Optional.of(lightfastness(arguments.required("lightfastness")));
    }
    return new Conditions(
        wells,
        dabs,
        names.read("must", arguments.value("must").orElse("")),
        names.read("never", arguments.value("never").orElse("")),
        new PaintRules(
            !arguments.has("any-paint"),
            arguments.has("single-pigment"),
            arguments.has("no-cadmium"),
            floor),
        most,
        arguments.has("weights") ? weights(arguments.required("weights")) : Weights.USUAL,
        subjects(arguments.value("outing"), kit));
  }

  private static List<SubjectColour> subjects(Optional<String> name, Kit kit)
      throws BadUseException {
    if (name.isEmpty()) {
      return List.of();
    }
    return kit.outings().stream()
        .filter(outing -> outing.name().equalsIgnoreCase(name.get()))
        .findFirst()
        .map(Outing::subjects)
        .orElseThrow(
            () ->
                new BadUseException(
                    ChooseWords.unknownOuting(
                        name.get(), kit.outings().stream().map(Outing::name).toList())));
  }

  private static int number(String option, String word, int from, int to) throws BadUseException {
    if (word.matches("\\d{1,4}")) {
      int number = Integer.parseInt(word);
      if (number >= from && number <= to) {
        return number;
      }
    }
    throw new BadUseException(ChooseWords.badNumber(option, word, from, to));
  }

  private static Lightfastness lightfastness(String word) throws BadUseException {
    return switch (word.toUpperCase(Locale.ROOT)) {
      case "I" -> Lightfastness.I;
      case "II" -> Lightfastness.II;
      case "III" -> Lightfastness.III;
      default -> throw new BadUseException(ChooseWords.badLightfastness(word));
    };
  }

  private static Weights weights(String word) throws BadUseException {
    String[] parts = word.split(",", -1);
    if (parts.length == 5 && word.matches("[0-9.,]{5,60}")) {
      try {
        return new Weights(
            Double.parseDouble(parts[0]),
            Double.parseDouble(parts[1]),
            Double.parseDouble(parts[2]),
            Double.parseDouble(parts[3]),
            Double.parseDouble(parts[4]));
      } catch (IllegalArgumentException outOfRange) {
        throw new BadUseException(ChooseWords.badWeights(word));
      }
    }
    throw new BadUseException(ChooseWords.badWeights(word));
  }

  private static String text(Choice choice, Kit kit) {
    List<String> lines = new ArrayList<>();
    lines.add(ChooseWords.looked(choice));
    for (int i = 0; i < choice.proposals().size(); i++) {
      Proposal proposal = choice.proposals().get(i);
      lines.add("");
      lines.add(ChooseWords.heading(i + 1) + ": " + ChooseWords.paints(proposal, kit));
      lines.add("  " + ChooseWords.worth(choice, i));
      lines.add("  " + ChooseWords.parts(proposal));
      lines.add("  " + ChooseWords.darkest(proposal));
      if (i == 0) {
        proposal.reasons().forEach(reason -> lines.add("  " + ChooseWords.reason(reason, kit)));
      } else {
        lines.add("  " + ChooseWords.exchanged(choice.proposals().get(0), proposal, kit));
      }
    }
    return String.join("\n", lines);
  }
}
