package org.panwright.analysis.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.Metals;
import org.panwright.paint.Paint;
import org.panwright.paint.Pigment;
import org.panwright.paint.PigmentLibrary;
import org.panwright.paint.PigmentShare;

/** Finds the metals in a lineup's pigments that call for care. */
public final class MetalsSearch {
  private MetalsSearch() {}

  static List<Finding> of(Case open) {
    Map<String, List<String>> found = metals(open.paints(), open.library());
    return found.isEmpty() ? List.of() : List.of(new Metals(found, Optional.empty()));
  }

  /** The ids of the paints by chemical symbol. */
  public static Map<String, List<String>> metals(List<Paint> paints, PigmentLibrary library) {
    Map<String, List<String>> found = new TreeMap<>();
    for (Paint paint : paints) {
      for (PigmentShare part : paint.pigments()) {
        for (String metal : library.find(part.pigment()).map(Pigment::metals).orElse(List.of())) {
          List<String> holders = found.computeIfAbsent(metal, m -> new ArrayList<>());
          if (!holders.contains(paint.id())) {
            holders.add(paint.id());
          }
        }
      }
    }
    return found;
  }
}
