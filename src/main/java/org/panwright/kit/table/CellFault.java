package org.panwright.kit.table;

import java.util.List;

/** What is wrong with one cell of a table of paints: facts for a sentence, no sentence. */
public sealed interface CellFault {
  /** The column at fault. */
  TableColumn column();

  /** A cell that must hold something and is empty. */
  record Empty(TableColumn column) implements CellFault {}

  /** Not the form of a Colour Index generic name. */
  record NoPigmentName(TableColumn column, String found) implements CellFault {}

  /** A Colour Index generic name the program has no figures for. */
  record UnknownPigment(TableColumn column, String found) implements CellFault {}

  /** A share of pigment that is no number above 0. */
  record BadShare(TableColumn column, String found) implements CellFault {}

  /** A word the program does not know here. */
  record UnknownWord(TableColumn column, String found, List<String> known) implements CellFault {}

  /** The box has no such well. */
  record NoSuchWell(TableColumn column, String found) implements CellFault {}

  /** An earlier row fills this well. */
  record WellTwice(TableColumn column, String found) implements CellFault {}
}
