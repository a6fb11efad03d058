package org.panwright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.panwright.paint.Paint;
import org.panwright.paint.Pigment;
import org.panwright.paint.PigmentShare;

/** Finds the metals in a lineup's pigments that call for care. */
final class MetalsSearch {
  private MetalsSearch() {}

  static List<Finding> of(Case open) {
    Map<String, List<String>> found = new TreeMap<>();
    for (Paint paint : open.paints()) {
      for (PigmentShare part : paint.pigments()) {
        for (String metal :
            open.library().find(part.pigment()).map(Pigment::metals).orElse(List.of())) {
          List<String> holders = found.computeIfAbsent(metal, m -> new ArrayList<>());
          if (!holders.contains(paint.id())) {
            holders.add(paint.id());
          }
        }
      }
    }
    return found.isEmpty() ? List.of() : List.of(new Metals(found));
  }
}
