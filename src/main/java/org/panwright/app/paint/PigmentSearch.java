package org.panwright.app.paint;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.panwright.paint.Pigment;
import org.panwright.paint.PigmentLibrary;
import org.panwright.words.PaintWords;

/** Finds pigments by what a painter types: a code or its beginning, or words of the name. */
final class PigmentSearch {
  private final List<Pigment> pigments;

  PigmentSearch(PigmentLibrary library) {
    pigments = library.pigments();
  }

  /** All pigments in which every word typed is found; those whose code begins with it first. */
  List<Pigment> matching(String typed) {
    String wanted = typed.strip().toLowerCase(Locale.ROOT);
    return pigments.stream()
        .filter(pigment -> holdsAll(pigment, wanted.split("\\s+")))
        .sorted(Comparator.comparingInt(pigment -> rank(pigment, wanted)))
        .toList();
  }

  private static boolean holdsAll(Pigment pigment, String[] words) {
    String all = text(pigment);
    for (String word : words) {
      if (!all.contains(word)) {
        return false;
      }
    }
    return true;
  }

  private static String text(Pigment pigment) {
    return String.join(
            " ",
            pigment.name().toString(),
            pigment.commonName(),
            PaintWords.label(pigment.family()))
        .toLowerCase(Locale.ROOT);
  }

  private static int rank(Pigment pigment, String wanted) {
    String code = pigment.name().code().toLowerCase(Locale.ROOT);
    if (code.equals(wanted)) {
      return 0;
    }
    return code.startsWith(wanted)
        ? 1
        : pigment.commonName().toLowerCase(Locale.ROOT).startsWith(wanted) ? 2 : 3;
  }
}
