package org.panwright.command;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.panwright.analysis.Judge;
import org.panwright.analysis.Judgement;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.paint.PigmentLibrary;
import org.panwright.print.CardOptions;
import org.panwright.print.KeyCard;
import org.panwright.print.PdfWriter;
import org.panwright.store.DemoKit;
import org.panwright.store.FileProblemException;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.store.SafeFile;
import org.panwright.words.CommandWords;

/**
 * {@code report KIT [--lineup NAME] --out DIR}: the papers and findings of one lineup as {@code
 * key-card.pdf}, {@code findings.txt} and {@code report.json}.
 */
final class Report implements Command {
  private static final String NAME = "report";

  @Override
  public void run(List<String> words, PrintStream out, PrintStream err)
      throws BadUseException, FileProblemException {
    Arguments arguments = Arguments.of(NAME, words, Set.of(), Set.of("lineup", "out"));
    if (arguments.plain().size() != 1) {
      throw new BadUseException(CommandWords.reportWantsOneKit(arguments.plain().size()));
    }
    Path folder = Arguments.path(arguments.required("out"));
    PigmentLibrary library = PigmentLibraryReader.read();
    Kit kit = OpenKit.at(arguments.plain().get(0), library, err);
    write(kit, lineup(kit, arguments.value("lineup")), library, folder, out);
  }

  /** The report that stands in for the window: on a kit if one is named, else on the demo kit. */
  record WithoutDisplay(Path folder) implements Command {
    @Override
    public void run(List<String> words, PrintStream out, PrintStream err)
        throws BadUseException, FileProblemException {
      PigmentLibrary library = PigmentLibraryReader.read();
      Kit kit = words.isEmpty() ? DemoKit.read(library) : OpenKit.at(words.get(0), library, err);
      write(kit, lineup(kit, Optional.empty()), library, folder, out);
    }
  }

  private static Lineup lineup(Kit kit, Optional<String> name) throws BadUseException {
    List<Lineup> lineups = kit.lineups();
    if (lineups.isEmpty()) {
      throw new BadUseException(CommandWords.noLineup(kit.name()));
    }
    if (name.isEmpty()) {
      return lineups.get(0);
    }
    return lineups.stream()
        .filter(lineup -> lineup.name().equals(name.get()))
        .findFirst()
        .or(() -> lineups.stream().filter(l -> l.name().equalsIgnoreCase(name.get())).findFirst())
        .orElseThrow(
            () ->
                new BadUseException(
                    CommandWords.unknownLineup(
                        name.get(), lineups.stream().map(Lineup::name).toList())));
  }

  private static void write(
      Kit kit, Lineup lineup, PigmentLibrary library, Path folder, PrintStream out)
      throws BadUseException, FileProblemException {
    Judgement judgement = new Judge(library).judge(kit, lineup.id(), () -> false);
    KeyCard card =
        KeyCard.of(
            kit, lineup.id(), library, CardOptions.USUAL, LocalDate.now(ZoneId.systemDefault()));
    makeFolder(folder);
    SafeFile files = new SafeFile();
    files.write(folder.resolve("key-card.pdf"), PdfWriter.write(card.papers()));
    files.write(folder.resolve("findings.txt"), utf8(CommandWords.findings(judgement)));
    files.write(folder.resolve("report.json"), utf8(Json.text(ReportJson.of(judgement)) + "\n"));
    out.println(CommandWords.reportWritten(lineup.name(), folder));
    card.notes().forEach(out::println);
  }

  private static void makeFolder(Path folder) throws BadUseException {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new BadUseException(CommandWords.noFolder(folder));
    }
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
