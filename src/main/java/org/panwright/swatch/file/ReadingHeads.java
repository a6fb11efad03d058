package org.panwright.swatch.file;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.panwright.swatch.file.ReadingMapping.ReadingLight;
import org.panwright.swatch.file.ReadingMapping.Scale;
import org.panwright.swatch.table.RawTable;
import org.panwright.swatch.table.TableFault;
import org.panwright.swatch.table.TableFaultException;

/**
 * What the heads of a table of readings say of its columns.
 *
 * <p>A column of a wavelength ends in its nanometres: 380, R380, nm380, SPECTRAL_NM380, SPEC_380,
 * 380.0 nm and the like; where no two columns do, it is one with a wavelength as the only number of
 * its head, as in "Reflectance at 380 nm [%]". L*, a*, b* and X, Y, Z are known by those letters,
 * with or without CIE, LAB or XYZ; a light named beside them counts. Heads with PCT or % mean
 * percent, with DEC 0..1; where they say neither, a table whose middle value lies above 1.5 is in
 * percent, so one value out of place does not change the unit of the rest.
 */
final class ReadingHeads {
  private static final Pattern USUAL =
      Pattern.compile(
          "(?i)(?:R|NM|SPEC|SPECTRAL|SPECTRAL_NM|SPECTRAL_DEC|SPECTRAL_PCT)?_?\\d{3,4}(?:[.,]\\d+)?(?:"
              + " ?NM)?");
  private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.,]\\d+)?");
  private static final Pattern A_LIGHT = Pattern.compile("(?i)D(?:50|65)");
  private static final Pattern AMOUNT =
      Pattern.compile(
          "(?i)(?:(?:loads?|amounts?|parts?|drops?|ml|mg|[µu]l)(?:_a)?|g_a)(?:\\s*[(\\[].*)?");

  /** A sample may be named for a wash of 25 %; "R [%]" names the unit. */
  private static final Pattern PERCENT =
      Pattern.compile("(?i)(?:\\bR|reflect\\p{L}*)\\s*[(\\[]?\\s*%|%\\s*(?:R\\b|reflect)");

  private static final Pattern NO_LETTER = Pattern.compile("[^a-z]");
  private static final List<String> NAMES =
      List.of("SAMPLE_NAME", "sample", "name", "SAMPLE_ID", "id");
  private static final double SHORTEST_NM = 200;
  private static final double LONGEST_NM = 2600;
  private static final double USUAL_FIRST_NM = 380;
  private static final double USUAL_LAST_NM = 730;
  private static final double PERCENT_FROM = 1.5;

  private ReadingHeads() {}

  /**
   * The likeliest mapping of a table.
   *
   * @param light of L*, a*, b*
   * @throws TableFaultException {@link TableFault.ColumnTwice} if two columns may be the same
   */
  static ReadingMapping guess(RawTable table, ReadingLight light) throws TableFaultException {
    Map<ReadingField, Integer> places = new EnumMap<>(ReadingField.class);
    name(table).ifPresent(place -> places.put(ReadingField.NAME, place));
    put(places, ReadingField.LIGHTNESS, table, "l");
    put(places, ReadingField.A, table, "a");
    put(places, ReadingField.B, table, "b");
    xyz(table).forEach(places::put);
    amount(table).ifPresent(place -> places.put(ReadingField.AMOUNT, place));
    int[] spectral = spectral(table.columns(), 0, table.columns().size() - 1);
    if (spectral.length == 0) {
      int[] xyz =
          places.keySet().containsAll(ReadingMapping.XYZ)
              ? ReadingMapping.XYZ.stream().mapToInt(places::get).toArray()
              : spectral;
      return new ReadingMapping(
          places, USUAL_FIRST_NM, USUAL_LAST_NM, scale(table, xyz), light(table, places, light));
    }
    int first = spectral[0];
    int last = spectral[spectral.length - 1];
    places.put(ReadingField.FIRST, first);
    places.put(ReadingField.LAST, last);
    return new ReadingMapping(
        places,
        wavelength(table.columns().get(first)).orElseThrow(),
        wavelength(table.columns().get(last)).orElseThrow(),
        scale(table, spectral),
        light(table, places, light));
  }

  /** The column of names: by its head, else the first that holds anything but numbers. */
  private static OptionalInt name(RawTable table) {
    if (table.isTurned()) {
      return OptionalInt.of(0);
    }
    OptionalInt said = NAMES.stream().mapToInt(table::find).filter(at -> at >= 0).findFirst();
    return said.isPresent()
        ? said
        : IntStream.range(0, table.columns().size())
            .filter(at -> table.rows().stream().allMatch(row -> isName(row.cells().get(at))))
            .findFirst();
  }

  private static boolean isName(String cell) {
    return !cell.isBlank() && Double.isNaN(ReadingColumns.parse(cell));
  }

  /** The columns from one to another whose heads name wavelengths; none if no two do. */
  static int[] spectral(List<String> heads, int from, int to) {
    int[] named =
        IntStream.rangeClosed(from, to)
            .filter(place -> wavelength(heads.get(place)).isPresent())
            .toArray();
    int[] usual =
        Arrays.stream(named).filter(place -> USUAL.matcher(heads.get(place)).matches()).toArray();
    int[] best = usual.length > 1 ? usual : named;
    return best.length > 1 ? best : new int[0];
  }

  /** The nanometres a head names; empty if it names none. */
  static OptionalDouble wavelength(String head) {
    Matcher matcher = NUMBER.matcher(head);
    if (!matcher.find()) {
      return OptionalDouble.empty();
    }
    double nm = Double.parseDouble(matcher.group().replace(',', '.'));
    boolean only = !matcher.find();
    return only && nm >= SHORTEST_NM && nm <= LONGEST_NM
        ? OptionalDouble.of(nm)
        : OptionalDouble.empty();
  }

  private static void put(
      Map<ReadingField, Integer> places, ReadingField field, RawTable table, String letter)
      throws TableFaultException {
    for (int place = 0; place < table.columns().size(); place++) {
      boolean meant = letter(table.columns().get(place)).equals(letter);
      if (meant && places.putIfAbsent(field, place) != null) {
        throw new TableFaultException(new TableFault.ColumnTwice(table.columns().get(place)));
      }
    }
  }

  /** The columns of X, Y, Z where all are there; those that say XYZ before bare letters. */
  private static Map<ReadingField, Integer> xyz(RawTable table) {
    List<String> heads = table.columns();
    boolean said = heads.stream().anyMatch(head -> head.toUpperCase(Locale.ROOT).contains("XYZ"));
    Map<ReadingField, Integer> places = new EnumMap<>(ReadingField.class);
    for (int place = 0; place < heads.size(); place++) {
      String head = heads.get(place);
      if (!said || head.toUpperCase(Locale.ROOT).contains("XYZ")) {
        switch (letter(head)) {
          case "x" -> places.putIfAbsent(ReadingField.X, place);
          case "y" -> places.putIfAbsent(ReadingField.Y, place);
          case "z" -> places.putIfAbsent(ReadingField.Z, place);
          default -> {}
        }
      }
    }
    return places.size() == ReadingMapping.XYZ.size() ? places : Map.of();
  }

  /** What is left of a head without CIE, LAB, XYZ and a light, in small letters. */
  private static String letter(String head) {
    String plain = A_LIGHT.matcher(head.toLowerCase(Locale.ROOT)).replaceAll("");
    return NO_LETTER.matcher(plain).replaceAll("").replaceFirst("^(?:cie)?(?:lab|xyz)?", "");
  }

  /** Whether heads name L*, a* and b*, or X, Y and Z. */
  static boolean nameColour(List<String> heads) {
    List<String> letters = heads.stream().map(ReadingHeads::letter).toList();
    return letters.containsAll(List.of("l", "a", "b"))
        || letters.containsAll(List.of("x", "y", "z"));
  }

  /** The light that the heads of L* and Y name, if they do. */
  private static ReadingLight light(
      RawTable table, Map<ReadingField, Integer> places, ReadingLight unnamed) {
    return Stream.of(ReadingField.LIGHTNESS, ReadingField.Y)
        .filter(places::containsKey)
        .map(field -> A_LIGHT.matcher(table.columns().get(places.get(field))))
        .filter(Matcher::find)
        .map(found -> found.group().endsWith("50") ? ReadingLight.D50 : ReadingLight.D65)
        .findFirst()
        .orElse(unnamed);
  }

  /** The column of amounts of paint, by its head: the first of several. */
  private static OptionalInt amount(RawTable table) {
    return IntStream.range(0, table.columns().size())
        .filter(place -> AMOUNT.matcher(table.columns().get(place)).matches())
        .findFirst();
  }

  /** The nanometres a head or cell names that holds nothing else. */
  static OptionalDouble plainWavelength(String text) {
    return USUAL.matcher(text).matches() ? wavelength(text) : OptionalDouble.empty();
  }

  private static Scale scale(RawTable table, int[] spectral) {
    boolean percent =
        table.isTurned()
            ? table.rows().stream().allMatch(row -> PERCENT.matcher(row.cells().get(0)).find())
            : Arrays.stream(spectral)
                .mapToObj(place -> table.columns().get(place).toUpperCase(Locale.ROOT))
                .anyMatch(head -> head.contains("PCT") || head.contains("%"));
    boolean share =
        Arrays.stream(spectral)
            .mapToObj(place -> table.columns().get(place).toUpperCase(Locale.ROOT))
            .anyMatch(head -> head.contains("DEC"));
    return percent || (!share && middle(table, spectral) > PERCENT_FROM)
        ? Scale.PERCENT
        : Scale.SHARE;
  }

  private static double middle(RawTable table, int[] spectral) {
    double[] values =
        table.rows().stream()
            .flatMapToDouble(
                row ->
                    Arrays.stream(spectral)
                        .mapToDouble(place -> ReadingColumns.parse(row.cells().get(place))))
            .filter(Double::isFinite)
            .sorted()
            .toArray();
    return values.length == 0 ? 0 : values[values.length / 2];
  }
}
