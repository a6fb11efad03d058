package org.panwright.app.chip;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.panwright.colour.GamutFit;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.colour.Oklch;
import org.panwright.colour.Xyz;
import org.panwright.mixing.Film;
import org.panwright.mixing.TintLoad;
import org.panwright.paint.Optics;
import org.panwright.paint.Paint;
import org.panwright.paint.Paper;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/**
 * The tones of paints, each worked out once. Any thread.
 *
 * <p>Tones depend on what is in the tube, the paper and the wash strengths, and on nothing else, so
 * they are kept by these; renaming a paint costs nothing.
 */
public final class ToneBook {
  /** Pages kept before the book starts anew: several of the largest shelves. */
  private static final int LARGEST = 20_000;

  private final PigmentLibrary library;
  private final Map<Key, Tones> pages = new ConcurrentHashMap<>();

  public ToneBook(PigmentLibrary library) {
    this.library = library;
  }

  private record Key(
      List<PigmentShare> pigments, Optional<Optics> measured, Paper paper, WashStrengths washes) {
    static Key of(Paint paint, Paper paper, WashStrengths washes) {
      return new Key(paint.pigments(), paint.measured(), paper, washes);
    }
  }

  /** The library estimates are made from. */
  public PigmentLibrary library() {
    return library;
  }

  /** Whether the tones of a paint are known without work. */
  public boolean holds(Paint paint, Paper paper, WashStrengths washes) {
    return pages.containsKey(Key.of(paint, paper, washes));
  }

  /** The tones of a paint on a paper. */
  public Tones of(Paint paint, Paper paper, WashStrengths washes) {
    Key key = Key.of(paint, paper, washes);
    Tones known = pages.get(key);
    if (known != null) {
      return known;
    }
    Tones worked = workOut(paint.optics(library), paper, washes);
    if (pages.size() >= LARGEST) {
      pages.clear();
    }
    pages.put(key, worked);
    return worked;
  }

  private static Tones workOut(Optics optics, Paper paper, WashStrengths washes) {
    List<Xyz> coats = new ArrayList<>();
    for (Wash wash : Wash.values()) {
      Film film = Film.of(optics, washes.load(wash));
      coats.add(Light.D65.xyz(film.dry(paper)));
    }
    return new Tones(
        coats.stream().map(GamutFit::ofXyzD65).toList(),
        oklch(coats.get(Wash.BUTTER.ordinal())),
        oklch(coats.get(Wash.MILK.ordinal())),
        TintLoad.of(optics, paper),
        optics.source(),
        optics.expectedError());
  }

  private static Oklch oklch(Xyz xyz) {
    return Oklab.ofD65(xyz).toOklch();
  }
}
