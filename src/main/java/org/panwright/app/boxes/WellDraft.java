package org.panwright.app.boxes;

import java.util.Optional;
import org.panwright.kit.Well;
import org.panwright.kit.WellKind;

/**
 * A well while it is being edited: unlike {@link Well} it may lie anywhere and be of any size.
 *
 * @param id unique in the box
 * @param label what is printed beside it
 * @param panId the kind of pan in it, if it is not the usual one
 */
record WellDraft(
    String id,
    String label,
    WellKind kind,
    double xMm,
    double yMm,
    double widthMm,
    double heightMm,
    Optional<String> panId) {
  static WellDraft of(Well well) {
    return new WellDraft(
        well.id(),
        well.label(),
        well.kind(),
        well.xMm(),
        well.yMm(),
        well.widthMm(),
        well.heightMm(),
        well.panId());
  }

  Well toWell() {
    return new Well(id, label.strip(), kind, xMm, yMm, widthMm, heightMm, panId);
  }

  WellDraft at(double newXMm, double newYMm) {
    return new WellDraft(id, label, kind, newXMm, newYMm, widthMm, heightMm, panId);
  }

  WellDraft sized(double newWidthMm, double newHeightMm) {
    return new WellDraft(id, label, kind, xMm, yMm, newWidthMm, newHeightMm, panId);
  }

  WellDraft labelled(String newLabel) {
    return new WellDraft(id, newLabel, kind, xMm, yMm, widthMm, heightMm, panId);
  }

  WellDraft of(WellKind newKind) {
    return new WellDraft(id, label, newKind, xMm, yMm, widthMm, heightMm, panId);
  }

  WellDraft withPan(Optional<String> newPanId) {
    return new WellDraft(id, label, kind, xMm, yMm, widthMm, heightMm, newPanId);
  }

  /** The same place in another box, under another id and label. */
  WellDraft named(String newId, String newLabel) {
    return new WellDraft(newId, newLabel, kind, xMm, yMm, widthMm, heightMm, panId);
  }

  boolean holds(double x, double y) {
    return x >= xMm && x <= xMm + widthMm && y >= yMm && y <= yMm + heightMm;
  }

  boolean overlaps(WellDraft other) {
    double touching = 0.01;
    return xMm < other.xMm + other.widthMm - touching
        && other.xMm < xMm + widthMm - touching
        && yMm < other.yMm + other.heightMm - touching
        && other.yMm < yMm + heightMm - touching;
  }
}
