package org.panwright.command;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.panwright.analysis.Judge;
import org.panwright.analysis.Judgement;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.paint.PigmentLibrary;
import org.panwright.print.CardOptions;
import org.panwright.print.ChartOptions;
import org.panwright.print.KeyCard;
import org.panwright.print.MixingChart;
import org.panwright.print.PanLabels;
import org.panwright.print.PaperFormat;
import org.panwright.print.PdfWriter;
import org.panwright.print.SwatchLadder;
import org.panwright.store.DemoKit;
import org.panwright.store.FileProblemException;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.store.SafeFile;
import org.panwright.words.CommandWords;

/**
 * {@code report KIT [--lineup NAME] --out DIR}: the papers of one lineup as PDF, its findings as
 * {@code findings.txt} and {@code report.json}.
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
    return NamedLineup.in(kit, name.get());
  }

  private static void write(
      Kit kit, Lineup lineup, PigmentLibrary library, Path folder, PrintStream out)
      throws BadUseException, FileProblemException {
    Judgement judgement = new Judge(library).judge(kit, lineup.id(), () -> false);
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    KeyCard card = KeyCard.of(kit, lineup.id(), library, CardOptions.USUAL, today);
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("key-card.pdf", PdfWriter.write(card.papers()));
    files.putAll(papersToPaint(kit, lineup, library));
    files.put("findings.txt", utf8(CommandWords.findings(judgement)));
    files.put("report.json", utf8(Json.text(ReportJson.of(judgement)) + "\n"));
    makeFolder(folder);
    SafeFile safe = new SafeFile();
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      safe.write(folder.resolve(file.getKey()), file.getValue());
    }
    out.println(CommandWords.reportWritten(lineup.name(), folder, List.copyOf(files.keySet())));
    card.notes().forEach(out::println);
  }

  /** The papers to paint by hand and to cut out, as far as the lineup has something for them. */
  private static Map<String, byte[]> papersToPaint(Kit kit, Lineup lineup, PigmentLibrary library) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    List<Well> filled =
        kit.boxOf(lineup).wells().stream().filter(w -> lineup.in(w.id()).isPresent()).toList();
    if (!filled.isEmpty()) {
      files.put(
          "mixing-chart.pdf",
          PdfWriter.write(MixingChart.of(kit, lineup.id(), library, ChartOptions.USUAL)));
      files.put(
          "swatch-ladder.pdf", PdfWriter.write(SwatchLadder.of(kit, lineup.id(), PaperFormat.A4)));
    }
    if (filled.stream().anyMatch(well -> well.kind() != WellKind.DAB)) {
      files.put("pan-labels.pdf", PdfWriter.write(PanLabels.of(kit, lineup.id(), PaperFormat.A4)));
    }
    return files;
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
