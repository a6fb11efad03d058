package org.panwright.store;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.paint.AbsorptionShape;
import org.panwright.paint.Evidence;
import org.panwright.paint.Granulation;
import org.panwright.paint.Handling;
import org.panwright.paint.HueFamily;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Pigment;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentName;
import org.panwright.paint.ScatteringShape;
import org.panwright.paint.Staining;
import org.panwright.paint.Transparency;

/**
 * Reads the pigment library, kept as JSON resources in {@code org/panwright/store/pigments}, one
 * file for each part of the hue circle.
 *
 * <p>These files are part of the program: a fault in one is a fault of the program and is thrown as
 * {@link IllegalStateException} naming file and field.
 */
public final class PigmentLibraryReader {
  private static final List<String> FILES =
      List.of("yellow", "orange", "red", "violet", "blue", "green", "earth", "neutral");

  private PigmentLibraryReader() {}

  /** All pigments the program comes with. */
  public static PigmentLibrary read() {
    List<Pigment> pigments = new ArrayList<>();
    for (String file : FILES) {
      String resource = "pigments/" + file + ".json";
      try (InputStream in = PigmentLibraryReader.class.getResourceAsStream(resource)) {
        if (in == null) {
          throw new IllegalStateException("the program lacks its table " + resource);
        }
        pigments.addAll(read(in, resource));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return new PigmentLibrary(pigments);
  }

  static List<Pigment> read(InputStream in, String resource) throws IOException {
    try {
      List<Pigment> pigments = new ArrayList<>();
      for (Field row : Field.root(new ObjectMapper().readTree(in)).at("pigments").list()) {
        pigments.add(pigment(row.group()));
      }
      return pigments;
    } catch (BadFieldException e) {
      throw new IllegalStateException(resource + ", " + e.getMessage(), e);
    }
  }

  private static Pigment pigment(Field row) throws BadFieldException {
    try {
      return new Pigment(
          new PigmentName(row.at("code").name(), row.at("variant").text()),
          row.at("name").name(),
          row.at("constitution").text(),
          row.at("family").word(HueFamily.class),
          new Handling(
              row.at("transparency").word(Transparency.class),
              row.at("staining").word(Staining.class),
              row.at("granulation").word(Granulation.class),
              row.at("lightfastness").word(Lightfastness.class)),
          row.at("strength").number(0, 100),
          texts(row.at("metals")),
          row.at("fugitive").flag(),
          row.at("caution").text(),
          absorption(row.at("absorption").group()),
          new ScatteringShape(
              row.at("scattering").at("at550").number(0, 1000),
              row.at("scattering").at("exponent").number(0, 4)),
          evidence(row.at("sources").group()));
    } catch (IllegalArgumentException e) {
      throw row.fault(new FieldFault.BreaksRule(e.getMessage()));
    }
  }

  private static List<String> texts(Field list) throws BadFieldException {
    List<String> texts = new ArrayList<>();
    for (Field entry : list.list()) {
      texts.add(entry.name());
    }
    return texts;
  }

  private static AbsorptionShape absorption(Field group) throws BadFieldException {
    List<AbsorptionShape.Term> terms = new ArrayList<>();
    for (Field entry : group.at("terms").list()) {
      terms.add(term(entry.group()));
    }
    return new AbsorptionShape(terms, group.at("masstoneDepth").number(0, 1000));
  }

  private static AbsorptionShape.Term term(Field entry) throws BadFieldException {
    Field edge = entry.at("edge");
    if (edge.isPresent()) {
      return new AbsorptionShape.Edge(
          nanometres(edge.at("atNm")), nanometres(edge.at("widthNm")), height(edge));
    }
    Field band = entry.at("band");
    if (band.isPresent()) {
      return new AbsorptionShape.Band(
          nanometres(band.at("atNm")), nanometres(band.at("fullWidthNm")), height(band));
    }
    return new AbsorptionShape.Flat(height(entry.at("flat").group()));
  }

  private static double nanometres(Field field) throws BadFieldException {
    return field.number(0, 2000);
  }

  private static double height(Field term) throws BadFieldException {
    return term.at("height").number(0, 1000);
  }

  private static Map<Pigment.Facts, Evidence> evidence(Field sources) throws BadFieldException {
    Map<Pigment.Facts, Evidence> evidence = new EnumMap<>(Pigment.Facts.class);
    for (Pigment.Facts facts : Pigment.Facts.values()) {
      Field source = sources.at(Spelling.of(facts)).group();
      Field note = source.at("evidence");
      evidence.put(
          facts,
          new Evidence(
              source.at("source").name(),
              note.isPresent() ? note.text() : "",
              source.at("confidence").word(Evidence.Confidence.class)));
    }
    return evidence;
  }
}
