package org.panwright.swatch.table;

/** What is wrong with a file of readings: facts for a sentence, no sentence. Lines count from 1. */
public sealed interface TableFault {
  /** The file holds no table of readings. */
  record NoTable() implements TableFault {}

  /** A column that must be there and is not. */
  record NoColumn(String column) implements TableFault {}

  /** The same column twice. */
  record ColumnTwice(String column) implements TableFault {}

  /** A row with more or fewer cells than there are columns. */
  record WrongCellCount(int line, int expected, int found) implements TableFault {}

  /** A cell that must hold something and is empty. */
  record EmptyCell(int line, String column) implements TableFault {}

  /** A cell that holds no finite number. */
  record NotANumber(int line, String column, String found) implements TableFault {}

  /** A number outside its range. */
  record OutOfRange(int line, String column, double low, double high, double found)
      implements TableFault {}

  /** The table has neither wavelengths nor L*, a*, b* nor X, Y, Z. */
  record NoReadings() implements TableFault {}

  /** The wavelengths leave out a part of the spectrum that is needed. */
  record BandsMissing(double firstNm, double lastNm) implements TableFault {}

  /** Two neighbouring wavelengths lie too far apart. */
  record BandsTooWide(double fromNm, double toNm) implements TableFault {}

  /** The wavelengths do not rise from column to column. */
  record BandsOutOfOrder(String column) implements TableFault {}

  /** The same where each line is a wavelength. */
  record LineOutOfOrder(int line, String found) implements TableFault {}

  /** No row is bare paper. */
  record NoPaper() implements TableFault {}

  /** Two rows are bare paper. */
  record PaperTwice(int line) implements TableFault {}

  /** A row names the same paint twice. */
  record PaintTwice(int line, String paint) implements TableFault {}

  /** A row names an amount but no paint. */
  record AmountWithoutPaint(int line, String column) implements TableFault {}

  /** The file ends within its table. */
  record CutShort(int line) implements TableFault {}

  /** The file is no text. */
  record NotText() implements TableFault {}

  /** The file announces another number of columns or rows than it holds. */
  record CountWrong(int line, String keyword, String said, int found) implements TableFault {}
}
