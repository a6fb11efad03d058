package org.panwright.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.analysis.judge.Judge;
import org.panwright.kit.Box;
import org.panwright.kit.Fill;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;
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

/** A small invented kit for the tests of shelf and box, and sessions on it. */
public final class BenchKit {
  /** The pigments the program comes with. */
  public static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();

  private BenchKit() {}

  /**
   * A paint of the library's pigments in equal shares; its id is its first code in small letters.
   */
  public static Paint paint(String id, String name, Ownership ownership, String... codes) {
    List<PigmentShare> shares = new ArrayList<>();
    for (String code : codes) {
      shares.add(new PigmentShare(PigmentName.parse(code), 1.0 / codes.length));
    }
    Pigment first = LIBRARY.find(shares.get(0).pigment()).orElseThrow();
    return new Paint(
        id, name, "", shares, first.handling(), ownership, Optional.empty(), "invented");
  }

  /** Seven paints. */
  public static List<Paint> paints() {
    return List.of(
        paint("lemon", "Lemon Yellow", Ownership.OWNED, "PY3"),
        paint("ultra", "Ultramarine", Ownership.OWNED, "PB29"),
        paint("rose", "Quinacridone Rose", Ownership.OWNED, "PV19 rose"),
        paint("sienna", "Burnt Sienna", Ownership.OWNED, "PBr7 burnt sienna"),
        paint("phthalo", "Phthalo Blue", Ownership.TRIED, "PB15:3"),
        paint("viridian", "Viridian", Ownership.WISHED, "PG18"),
        paint("sap", "Sap Green", Ownership.OWNED, "PY3", "PB15:3"));
  }

  /** Two rows of three half pans and a dab place to their right. */
  public static Box box() {
    List<Well> wells = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      wells.add(
          new Well(
              "w" + (i + 1),
              "" + (i + 1),
              WellKind.HALF_PAN,
              2 + 21 * (i % 3),
              2 + 18 * (i / 3),
              19,
              16));
    }
    wells.add(new Well("d1", "dab 1", WellKind.DAB, 66, 2, 10, 10));
    return new Box("tin", "Pocket tin", 80, 38, 78, 36, wells);
  }

  /** Lemon in well 1, ultramarine in 2, rose as half a pan in 3; the rest empty. */
  public static Kit kit() {
    Map<String, Filling> fillings = new LinkedHashMap<>();
    fillings.put("w1", new Filling("lemon", Fill.FULL));
    fillings.put("w2", new Filling("ultra", Fill.FULL));
    fillings.put("w3", new Filling("rose", Fill.HALF));
    return kit(paints(), box(), fillings);
  }

  /** A kit of these paints with one box and one lineup. */
  public static Kit kit(List<Paint> paints, Box box, Map<String, Filling> fillings) {
    Lineup lineup = new Lineup("line", "Summer", box.id(), fillings);
    return new Kit(
        "Test kit",
        new Shelf(paints),
        List.of(box),
        List.of(lineup),
        List.of(),
        Paper.WHITE,
        WashStrengths.USUAL,
        "");
  }

  /** A session that judges at once, on the caller's thread. */
  public static Session session(Kit kit) {
    return new Session(
        new Judge(LIBRARY),
        Runnable::run,
        Runnable::run,
        failure -> {
          throw failure;
        },
        kit);
  }
}
