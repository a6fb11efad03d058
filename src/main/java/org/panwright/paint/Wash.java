package org.panwright.paint;

/** The names painters give to how much water is in a wash, from thick to thin. */
public enum Wash {
  BUTTER,
  CREAM,
  MILK,
  COFFEE,
  TEA
}
