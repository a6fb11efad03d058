package org.panwright.command;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.panwright.kit.Kit;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.Wash;
import org.panwright.store.FileProblemException;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.words.CommandWords;
import org.panwright.words.PaintWords;

/** {@code mix PART PART … [--kit KIT] [--wash milk] [--wet] [--json]}: the colour of one mix. */
final class Mix implements Command {
  private static final String NAME = "mix";

  @Override
  public void run(List<String> words, PrintStream out, PrintStream err)
      throws BadUseException, FileProblemException {
    Arguments arguments = Arguments.of(NAME, words, Set.of("wet", "json"), Set.of("kit", "wash"));
    if (arguments.plain().isEmpty()) {
      throw new BadUseException(CommandWords.NO_PARTS);
    }
    Wash wash = wash(arguments.value("wash"));
    PigmentLibrary library = PigmentLibraryReader.read();
    Kit kit = Kit.empty(NAME);
    if (arguments.has("kit")) {
      kit = OpenKit.at(arguments.required("kit"), library, err);
    }
    List<Part> parts =
        new PartReader(library, arguments.has("kit") ? Optional.of(kit) : Optional.empty())
            .readAll(arguments.plain());
    MixAnswer answer = MixAnswer.of(parts, kit.paper(), kit.washes(), wash, arguments.has("wet"));
    out.println(arguments.has("json") ? Json.text(answer.json()) : answer.text());
  }

  private static Wash wash(Optional<String> word) throws BadUseException {
    if (word.isEmpty()) {
      return Wash.MILK;
    }
    String wanted = word.get().toLowerCase(Locale.ROOT);
    for (Wash wash : Wash.values()) {
      if (PaintWords.label(wash).equals(wanted)) {
        return wash;
      }
    }
    throw new BadUseException(CommandWords.unknownWash(word.get()));
  }
}
