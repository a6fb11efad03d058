package org.panwright.app.shelf;

/** Whether a paint sits in the lineup looked at. */
public enum Presence {
  IN_LINEUP,
  NOT_IN_LINEUP
}
