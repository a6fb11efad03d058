package org.panwright.swatch.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.panwright.swatch.table.DelimitedText;
import org.panwright.swatch.table.RawTable;
import org.panwright.swatch.table.TableFault;
import org.panwright.swatch.table.TableFaultException;

/**
 * The paired form of CGATS.17, where every reflectance is preceded by its own wavelength: columns
 * SPECTRAL_NM and SPECTRAL_PCT (percent) or SPECTRAL_DEC (0..1), over and over.
 */
final class CgatsPairs {
  private CgatsPairs() {}

  /**
   * The same table with one column for each wavelength, as its first row names them; a table
   * without pairs as it is.
   *
   * @throws TableFaultException if a row has other wavelengths than the first
   */
  static RawTable unpaired(RawTable table) throws TableFaultException {
    if (table.find("SPECTRAL_NM") < 0 || table.rows().isEmpty()) {
      return table;
    }
    List<String> first = table.rows().get(0).cells();
    List<String> columns = new ArrayList<>();
    for (int i = 0; i < first.size(); i++) {
      if (isValue(table, i)) {
        columns.add(table.columns().get(i) + "_" + whole(first.get(i - 1)));
      } else {
        columns.add(table.columns().get(i));
      }
    }
    for (DelimitedText.Row row : table.rows()) {
      for (int i = 1; i < first.size(); i++) {
        if (isValue(table, i) && !row.cells().get(i - 1).equals(first.get(i - 1))) {
          throw new TableFaultException(
              new TableFault.NotANumber(row.line(), columns.get(i), row.cells().get(i - 1)));
        }
      }
    }
    return new RawTable(columns, table.rows());
  }

  private static boolean isValue(RawTable table, int column) {
    String name = table.columns().get(column).toUpperCase(Locale.ROOT);
    return column > 0
        && (name.equals("SPECTRAL_PCT") || name.equals("SPECTRAL_DEC"))
        && table.columns().get(column - 1).equalsIgnoreCase("SPECTRAL_NM");
  }

  private static String whole(String wavelength) {
    return wavelength.replaceFirst("[.,]0*$", "");
  }
}
