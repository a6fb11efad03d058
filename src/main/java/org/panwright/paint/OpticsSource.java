package org.panwright.paint;

/** Where a paint's optics come from, the surest first: the badge shown beside every colour. */
public enum OpticsSource {
  /** A measured spectral file. */
  SPECTRA,
  /** Swatches the painter painted and read from a scan or photo. */
  SWATCHES,
  /** Estimated from the Colour Index names of the pigments. */
  PIGMENTS
}
