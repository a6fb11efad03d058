package org.panwright.app.boxes;

import org.panwright.kit.Fixture;
import org.panwright.kit.FixtureKind;

/**
 * A mixing area, strip, magnet or clip while it is being edited: it may lie anywhere and be of any
 * size.
 *
 * @param id unique among the parts of the box
 */
record PartDraft(
    String id,
    FixtureKind kind,
    boolean inLid,
    double xMm,
    double yMm,
    double widthMm,
    double heightMm,
    double thicknessMm) {
  static PartDraft of(Fixture fixture) {
    return new PartDraft(
        fixture.id(),
        fixture.kind(),
        fixture.inLid(),
        fixture.xMm(),
        fixture.yMm(),
        fixture.widthMm(),
        fixture.heightMm(),
        fixture.thicknessMm());
  }

  /** Whether its own sizes make a part. */
  boolean isSized() {
    return xMm >= 0
        && yMm >= 0
        && widthMm >= 1
        && widthMm <= 1000
        && heightMm >= 1
        && heightMm <= 1000
        && thicknessMm >= 0
        && thicknessMm <= 20;
  }

  Fixture toFixture() {
    return new Fixture(id, kind, inLid, xMm, yMm, widthMm, heightMm, thicknessMm);
  }

  PartDraft at(double x, double y) {
    return new PartDraft(id, kind, inLid, x, y, widthMm, heightMm, thicknessMm);
  }

  PartDraft sized(double width, double height) {
    return new PartDraft(id, kind, inLid, xMm, yMm, width, height, thicknessMm);
  }

  PartDraft thick(double thickness) {
    return new PartDraft(id, kind, inLid, xMm, yMm, widthMm, heightMm, thickness);
  }

  PartDraft of(FixtureKind changed) {
    return new PartDraft(id, changed, inLid, xMm, yMm, widthMm, heightMm, thicknessMm);
  }

  PartDraft inLid(boolean now) {
    return new PartDraft(id, kind, now, xMm, yMm, widthMm, heightMm, thicknessMm);
  }

  boolean holds(double x, double y) {
    return x >= xMm && x <= xMm + widthMm && y >= yMm && y <= yMm + heightMm;
  }
}
