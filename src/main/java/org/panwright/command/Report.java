package org.panwright.command;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.panwright.analysis.judge.Judge;
import org.panwright.analysis.judge.Judgement;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.paint.PigmentLibrary;
import org.panwright.print.Bundle;
import org.panwright.print.Made;
import org.panwright.print.Occasion;
import org.panwright.print.PaperFormat;
import org.panwright.print.PaperKind;
import org.panwright.print.PaperOrder;
import org.panwright.print.Papers;
import org.panwright.print.PdfWriter;
import org.panwright.store.DemoKit;
import org.panwright.store.FileProblemException;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.words.CommandWords;
import org.panwright.words.PaperWords;

/**
 * {@code report KIT [--lineup NAME] --out DIR}: the papers of one lineup as PDF, its findings as
 * {@code findings.txt} and {@code report.json}.
 */
final class Report implements Command {
  private static final String NAME = "report";
  private static final String ALL_PAPERS = "papers.pdf";

  @Override
  public void run(List<String> words, PrintStream out, PrintStream err)
      throws BadUseException, FileProblemException {
    Arguments arguments = Arguments.of(NAME, words, Set.of(), Set.of("lineup", "paper", "out"));
    if (arguments.plain().size() != 1) {
      throw new BadUseException(CommandWords.reportWantsOneKit(arguments.plain().size()));
    }
    Path folder = Arguments.path(arguments.required("out"));
    PaperFormat paper = paper(arguments.value("paper"));
    PigmentLibrary library = PigmentLibraryReader.read();
    Kit kit = OpenKit.at(arguments.plain().get(0), library, err);
    write(kit, lineup(kit, arguments.value("lineup")), paper, library, folder, out);
  }

  /** The report that stands in for the window: on a kit if one is named, else on the demo kit. */
  record WithoutDisplay(Path folder) implements Command {
    @Override
    public void run(List<String> words, PrintStream out, PrintStream err)
        throws BadUseException, FileProblemException {
      PigmentLibrary library = PigmentLibraryReader.read();
      Kit kit = words.isEmpty() ? DemoKit.read(library) : OpenKit.at(words.get(0), library, err);
      write(kit, lineup(kit, Optional.empty()), PaperFormat.A4, library, folder, out);
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
    return NamedLineup.in(kit, name.get());
  }

  private static void write(
      Kit kit,
      Lineup lineup,
      PaperFormat paper,
      PigmentLibrary library,
      Path folder,
      PrintStream out)
      throws BadUseException, FileProblemException {
    Judgement judgement = new Judge(library).judge(kit, lineup.id(), () -> false);
    Occasion occasion =
        new Occasion(
            kit, lineup.id(), outing(kit, lineup), library, LocalDate.now(ZoneId.systemDefault()));
    List<String> notes = new ArrayList<>();
    Map<String, byte[]> files = papers(occasion, paper, notes);
    files.put("findings.txt", utf8(CommandWords.findings(judgement)));
    files.put("report.json", utf8(Json.text(ReportJson.of(judgement)) + "\n"));
    new ReportFolder(folder).write(files);
    out.println(CommandWords.reportWritten(lineup.name(), folder, List.copyOf(files.keySet())));
    notes.stream().distinct().forEach(out::println);
  }

  /** All papers the lineup has something for, and all of them in one. */
  private static Map<String, byte[]> papers(
      Occasion occasion, PaperFormat paper, List<String> notes) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    List<Papers> all = new ArrayList<>();
    for (PaperOrder order : PaperKind.allOn(paper)) {
      String file = order.kind().fileName() + ".pdf";
      Made made = Made.of(order, occasion);
      if (made.papers().isPresent()) {
        files.put(file, PdfWriter.write(made.papers().get()));
        all.add(made.papers().get());
        notes.addAll(made.notes());
      } else {
        made.notes().forEach(why -> notes.add(CommandWords.notWritten(file, why)));
      }
    }
    if (!all.isEmpty()) {
      files.put(ALL_PAPERS, PdfWriter.write(new Bundle(PaperWords.all(occasion.name()), all)));
    }
    return files;
  }

  /** The first outing that takes the lineup along. */
  private static Optional<Outing> outing(Kit kit, Lineup lineup) {
    return kit.outings().stream()
        .filter(outing -> outing.lineupId().equals(Optional.of(lineup.id())))
        .findFirst();
  }

  private static PaperFormat paper(Optional<String> name) throws BadUseException {
    if (name.isEmpty()) {
      return PaperFormat.A4;
    }
    return Stream.of(PaperFormat.values())
        .filter(format -> format.name().equalsIgnoreCase(name.get()))
        .findFirst()
        .orElseThrow(
            () ->
                new BadUseException(
                    CommandWords.unknownPaper(
                        name.get(),
                        Stream.of(PaperFormat.values())
                            .map(format -> PaperWords.format(format.name()))
                            .toList())));
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
