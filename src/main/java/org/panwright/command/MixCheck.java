package org.panwright.command;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.swatch.CoatTable;
import org.panwright.swatch.FitRefusedException;
import org.panwright.swatch.FitReport;
import org.panwright.swatch.FitSettings;
import org.panwright.swatch.MixErrors;
import org.panwright.swatch.OpticsFit;
import org.panwright.swatch.PaintLoad;
import org.panwright.swatch.Reading;
import org.panwright.swatch.ScreenAverage;
import org.panwright.swatch.SwatchSet;
import org.panwright.swatch.TableFaultException;
import org.panwright.words.MixCheckWords;
import org.panwright.words.SwatchWords;

/**
 * The command {@code mixcheck}: fits paints to one file of measured coats, predicts the mixes of
 * another, and says how far off the predictions are. Anyone can test the engine with it.
 *
 * <p>Both files are laid out as {@link CoatTable} describes; the paper is that of the first. With
 * {@code --from colour} only the colour of each coat of the first file is used.
 */
public final class MixCheck {
  private static final long MOST_MEGABYTES = 50;

  private MixCheck() {}

  /**
   * Runs the command and answers what it prints.
   *
   * @param arguments what stands after {@code mixcheck}
   * @throws BadUseException with one sentence, if arguments or files cannot be used
   */
  public static String run(List<String> arguments) throws BadUseException {
    MixCheckOptions options = MixCheckOptions.of(arguments);
    SwatchSet set = fitSet(options);
    List<CoatTable.Row> mixes = mixes(options, set);
    FitReport report = fit(options, set);
    Reading paper = set.swatches().get(0).ground();
    ScreenAverage screen = new ScreenAverage(set);
    List<Lab> read = new ArrayList<>();
    List<Lab> predicted = new ArrayList<>();
    List<Lab> averaged = new ArrayList<>();
    for (CoatTable.Row mix : mixes) {
      read.add(mix.reading().lab());
      predicted.add(Light.D65.lab(report.predict(mix.paints(), paper)));
      averaged.add(screen.of(mix.paints()));
    }
    MixErrors law = MixErrors.of(predicted, read);
    MixErrors average = MixErrors.of(averaged, read);
    return options.json() ? json(law, average) : MixCheckWords.summary(law, average);
  }

  private static SwatchSet fitSet(MixCheckOptions options) throws BadUseException {
    String file = options.fit();
    try {
      SwatchSet set = table(file).swatches();
      return options.byColour() ? set.byColour() : set;
    } catch (TableFaultException broken) {
      throw new BadUseException(SwatchWords.sentence(file, broken.fault()));
    }
  }

  private static List<CoatTable.Row> mixes(MixCheckOptions options, SwatchSet set)
      throws BadUseException {
    String file = options.test();
    List<CoatTable.Row> mixes = table(file).coats();
    if (mixes.isEmpty()) {
      throw new BadUseException(MixCheckWords.nothingToTest(file));
    }
    Set<String> alone =
        set.swatches().stream()
            .filter(swatch -> swatch.isSingle())
            .map(swatch -> swatch.paints().get(0).paint())
            .collect(Collectors.toSet());
    Set<String> known = Set.copyOf(set.paints());
    for (CoatTable.Row mix : mixes) {
      for (PaintLoad share : mix.paints()) {
        if (!known.contains(share.paint())) {
          throw new BadUseException(
              MixCheckWords.paintNotFitted(file, mix.name(), share.paint(), options.fit()));
        }
        if (!alone.contains(share.paint())) {
          throw new BadUseException(MixCheckWords.paintNeverAlone(options.fit(), share.paint()));
        }
      }
    }
    return mixes;
  }

  private static FitReport fit(MixCheckOptions options, SwatchSet set) throws BadUseException {
    try {
      return OpticsFit.of(set, FitSettings.MEASURED);
    } catch (FitRefusedException refused) {
      throw new BadUseException(SwatchWords.sentence(options.fit(), refused.refusal()));
    }
  }

  private static CoatTable table(String file) throws BadUseException {
    try {
      Path path = Path.of(file);
      if (!Files.isRegularFile(path)) {
        throw new BadUseException(MixCheckWords.noFile(file));
      }
      if (Files.size(path) > MOST_MEGABYTES << 20) {
        throw new BadUseException(MixCheckWords.tooLarge(file, MOST_MEGABYTES));
      }
      return CoatTable.read(Files.readAllLines(path, StandardCharsets.UTF_8));
    } catch (InvalidPathException noPath) {
      throw new BadUseException(MixCheckWords.noFile(file));
    } catch (CharacterCodingException noText) {
      throw new BadUseException(MixCheckWords.unreadable(file));
    } catch (IOException unreadable) {
      throw new BadUseException(MixCheckWords.unreadable(file));
    } catch (TableFaultException broken) {
      throw new BadUseException(SwatchWords.sentence(file, broken.fault()));
    }
  }

  private static String json(MixErrors law, MixErrors average) {
    ObjectNode root = node(law);
    root.set("srgbAverage", node(average));
    return root.toPrettyString() + System.lineSeparator();
  }

  private static ObjectNode node(MixErrors errors) {
    return new ObjectMapper()
        .createObjectNode()
        .put("n", errors.n())
        .put("median", errors.median())
        .put("p90", errors.p90())
        .put("max", errors.max())
        .put("shareUnder5", errors.shareUnder5());
  }
}
