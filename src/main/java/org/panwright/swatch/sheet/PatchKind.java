package org.panwright.swatch.sheet;

/** The four patches a paint has on a sheet, from left to right. */
public enum PatchKind {
  /** The paint alone, thick. */
  FULL,
  /** The paint alone, thinned. */
  WASH,
  /** As much white as paint. */
  TINT,
  /** As much black as paint. */
  TONE
}
