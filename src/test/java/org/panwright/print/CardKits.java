package org.panwright.print;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.kit.Box;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
import org.panwright.paint.Handling;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.Paper;
import org.panwright.paint.Pigment;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Shelf;
import org.panwright.paint.WashStrengths;
import org.panwright.store.PigmentLibraryReader;

/** Small kits for the tests of the papers. */
final class CardKits {
  static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();
  static final LocalDate DATE = LocalDate.of(2026, 11, 25);
  static final String LINEUP = "lineup";

  private static final String[][] PAINTS = {
    {"lemon yellow", "PY3"},
    {"warm yellow", "PY65"},
    {"pyrrole scarlet", "PR255"},
    {"quinacridone rose", "PV19"},
    {"ultramarine blue", "PB29"},
    {"phthalo blue green shade", "PB15:3"},
    {"cobalt turquoise", "PG50"},
    {"viridian", "PG18"},
    {"yellow ochre", "PY43"},
    {"burnt sienna", "PR101"},
    {"cadmium red deep", "PR108"},
    {"neutral tint", "PB15:3", "PV19", "PBk7"},
    {"cerulean blue", "PB35"},
    {"dioxazine violet", "PV23"},
  };

  private CardKits() {}

  /** Wells in rows, 16 × 19 mm each as usual for half pans, a channel of 12 mm after each row. */
  static Box rows(int rows, int columns, double lidWidthMm, double lidHeightMm) {
    List<Well> wells = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        int number = row * columns + column + 1;
        wells.add(
            new Well(
                "w" + number,
                String.valueOf(number),
                WellKind.HALF_PAN,
                3 + 16 * column,
                3 + 31 * row,
                16,
                19));
      }
    }
    return new Box(
        "box",
        "tin of " + wells.size() + " half pans",
        6 + 16 * columns,
        6 + 31 * rows - 12,
        lidWidthMm,
        lidHeightMm,
        wells);
  }

  /** A tin of twelve with three dabs in its channel. */
  static Box twelveWithDabs() {
    Box plain = rows(2, 6, 108, 62);
    List<Well> wells = new ArrayList<>(plain.wells());
    for (int i = 0; i < 3; i++) {
      wells.add(new Well("d" + i, "dab " + (i + 1), WellKind.DAB, 12 + 32 * i, 24, 14, 8));
    }
    return new Box("box", "tin of twelve with dabs", 108, 62, 108, 62, wells);
  }

  /** A kit with one lineup that fills a box in the order of the shelf; {@code empty} wells stay. */
  static Kit kit(Box box, List<Paint> paints, String lineupName, String... empty) {
    Map<String, Filling> fillings = new LinkedHashMap<>();
    int next = 0;
    for (Well well : box.wells()) {
      if (!List.of(empty).contains(well.id()) && next < paints.size()) {
        Fill fill = well.kind() == WellKind.DAB ? Fill.DAB : next % 4 == 3 ? Fill.HALF : Fill.FULL;
        fillings.put(well.id(), new Filling(paints.get(next).id(), fill));
        next++;
      }
    }
    return new Kit(
        "kit",
        new Shelf(paints),
        List.of(box),
        List.of(new Lineup(LINEUP, lineupName, box.id(), fillings)),
        List.of(),
        Paper.WHITE,
        WashStrengths.USUAL,
        "");
  }

  static Kit kit(Box box, String... empty) {
    return kit(box, paints(box.wells().size()), "Estuary, low water", empty);
  }

  /** This many paints; after the known ones they come round again under numbered names. */
  static List<Paint> paints(int count) {
    List<Paint> paints = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String[] row = PAINTS[i % PAINTS.length];
      String name = i < PAINTS.length ? row[0] : row[0] + " " + (i / PAINTS.length + 1);
      String[] codes = new String[row.length - 1];
      System.arraycopy(row, 1, codes, 0, codes.length);
      paints.add(paint("p" + i, name, codes));
    }
    return paints;
  }

  /** A paint of equal shares of these pigments, with the handling of the first. */
  static Paint paint(String id, String name, String... codes) {
    List<PigmentShare> shares = new ArrayList<>();
    for (String code : codes) {
      shares.add(new PigmentShare(PigmentName.of(code), 1.0 / codes.length));
    }
    Handling handling = LIBRARY.find(PigmentName.of(codes[0])).map(Pigment::handling).orElseThrow();
    return new Paint(id, name, "", shares, handling, Ownership.OWNED, Optional.empty(), "");
  }

  static KeyCard card(Kit kit, CardOptions options) {
    return KeyCard.of(kit, LINEUP, LIBRARY, options, DATE);
  }
}
