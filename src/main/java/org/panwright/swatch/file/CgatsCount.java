package org.panwright.swatch.file;

import java.util.List;
import org.panwright.swatch.table.TableFault;
import org.panwright.swatch.table.TableFaultException;

/** A count that a CGATS.17 file announces before it gives the things counted. */
final class CgatsCount {
  private final String keyword;
  private String said = "";
  private int line;

  CgatsCount(String keyword) {
    this.keyword = keyword;
  }

  /** Takes note if a line announces the count; the last one holds. */
  void note(List<String> words, int at) {
    if (words.size() >= 2 && words.get(0).equalsIgnoreCase(keyword)) {
      said = words.get(1);
      line = at;
    }
  }

  /** Refuses another number than was announced, if any was. */
  void requireSame(int found) throws TableFaultException {
    if (!said.isEmpty() && !said.equals(Integer.toString(found))) {
      throw new TableFaultException(new TableFault.CountWrong(line, keyword, said, found));
    }
  }
}
