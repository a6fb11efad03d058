package org.panwright.kit.table;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;

/** The pigments of a paint in one cell: {@code PB29 70 % + PBr7 raw umber 30 %}. */
final class PigmentCell {
  /** A comma between digits belongs to a number. */
  private static final Pattern BETWEEN = Pattern.compile("\\s*(?:[+;/&]|(?<!\\d),|,(?!\\d))\\s*");

  private static final Pattern PART = Pattern.compile("(.*?)(?:\\s+([-+]?[\\d.,]+)\\s*%)?");
  private static final Pattern CODE = Pattern.compile("(?i)P(Y|O|R|V|BR|BK|B|G|W)\\s*(\\d.*)");
  private static final double EQUAL = 1e-9;

  private PigmentCell() {}

  /** The cell for some pigments; equal shares go without saying. */
  static String write(List<PigmentShare> pigments) {
    boolean equal =
        pigments.stream().allMatch(p -> Math.abs(p.share() - pigments.get(0).share()) < EQUAL);
    return pigments.stream()
        .map(p -> p.pigment() + (equal ? "" : " " + percent(p.share()) + " %"))
        .collect(Collectors.joining(" + "));
  }

  private static String percent(double share) {
    return new BigDecimal(share * 100)
        .round(new MathContext(12))
        .stripTrailingZeros()
        .toPlainString();
  }

  /** The pigments a cell names; without shares they share equally. */
  static List<PigmentShare> read(String cell, PigmentLibrary library) throws CellFaultException {
    if (cell.isBlank()) {
      throw new CellFaultException(new CellFault.Empty(TableColumn.PIGMENTS));
    }
    List<PigmentName> names = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    for (String part : BETWEEN.split(cell.strip(), -1)) {
      Matcher matcher = PART.matcher(part.strip());
      if (!matcher.matches()) {
        throw new CellFaultException(new CellFault.NoPigmentName(TableColumn.PIGMENTS, part));
      }
      names.add(name(matcher.group(1), library));
      shares.add(matcher.group(2) == null ? 0 : share(matcher.group(2)));
    }
    return shared(cell, names, shares);
  }

  private static List<PigmentShare> shared(
      String cell, List<PigmentName> names, List<Double> shares) throws CellFaultException {
    long given = shares.stream().filter(share -> share > 0).count();
    if (given > 0 && given < shares.size()) {
      throw new CellFaultException(new CellFault.BadShare(TableColumn.PIGMENTS, cell));
    }
    double sum = shares.stream().mapToDouble(Double::doubleValue).sum();
    List<PigmentShare> pigments = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      double share = given == 0 ? 1.0 / names.size() : shares.get(i) / sum;
      pigments.add(new PigmentShare(names.get(i), share));
    }
    return pigments;
  }

  private static PigmentName name(String text, PigmentLibrary library) throws CellFaultException {
    PigmentName name;
    try {
      name = PigmentName.parse(inOurLetters(text.strip()));
    } catch (IllegalArgumentException e) {
      throw new CellFaultException(new CellFault.NoPigmentName(TableColumn.PIGMENTS, text));
    }
    if (library.find(name).isEmpty()) {
      throw new CellFaultException(
          new CellFault.UnknownPigment(TableColumn.PIGMENTS, name.toString()));
    }
    return name;
  }

  /** Capitals and the space after the letters are written in many ways: "pbr 7" is PBr7. */
  private static String inOurLetters(String text) {
    Matcher matcher = CODE.matcher(text);
    if (!matcher.matches()) {
      return text;
    }
    String letters = matcher.group(1).toUpperCase(Locale.ROOT);
    String ours =
        letters.length() == 2 ? "B" + letters.substring(1).toLowerCase(Locale.ROOT) : letters;
    return "P" + ours + matcher.group(2);
  }

  private static double share(String digits) throws CellFaultException {
    try {
      double share = Double.parseDouble(digits.replace(',', '.'));
      if (share > 0 && share <= 1000) {
        return share;
      }
    } catch (NumberFormatException e) {
      // Told below, as any other share that is none.
    }
    throw new CellFaultException(new CellFault.BadShare(TableColumn.PIGMENTS, digits));
  }
}
