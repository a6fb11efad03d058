package org.panwright.analysis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.panwright.analysis.judge.Judge;
import org.panwright.analysis.judge.Judgement;
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

/** Kits for tests; each paint is one pigment and is called by its code. */
public final class Lineups {
  /** The pigments the program comes with. */
  public static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();

  /** The only lineup of each kit. */
  public static final String ID = "lineup";

  private Lineups() {}

  /** An owned paint of one pigment. */
  public static Paint paint(String pigment) {
    return paint(pigment, Ownership.OWNED);
  }

  /** A paint of one pigment. */
  public static Paint paint(String pigment, Ownership ownership) {
    PigmentName name = PigmentName.parse(pigment);
    Pigment known = LIBRARY.find(name).orElseThrow();
    return new Paint(
        pigment,
        pigment,
        "",
        List.of(new PigmentShare(name, 1)),
        known.handling(),
        ownership,
        Optional.empty(),
        "");
  }

  /** Owned paints of one pigment each. */
  public static List<Paint> paints(String... pigments) {
    return List.of(pigments).stream().map(Lineups::paint).toList();
  }

  /** A kit whose lineup fills the first wells of a box of half pans. */
  public static Kit kit(List<Paint> shelf, int wells, String... inBox) {
    List<Well> places = new ArrayList<>();
    for (int i = 0; i < wells; i++) {
      double xMm = 20.0 * (i % 12);
      int row = i / 12;
      places.add(new Well("w" + i, "" + (i + 1), WellKind.HALF_PAN, xMm, 20.0 * row, 16, 19));
    }
    Map<String, Filling> fillings = new LinkedHashMap<>();
    for (int i = 0; i < inBox.length; i++) {
      fillings.put("w" + i, new Filling(inBox[i], Fill.FULL));
    }
    return new Kit(
        "test",
        new Shelf(shelf),
        List.of(new Box("box", "box", 300, 300, 300, 300, places)),
        List.of(new Lineup(ID, "lineup", "box", fillings)),
        List.of(),
        Paper.WHITE,
        WashStrengths.USUAL,
        "");
  }

  /** The judgement of a kit's lineup by a new judge. */
  public static Judgement judge(Kit kit) {
    return new Judge(LIBRARY).judge(kit, ID, () -> false);
  }
}
