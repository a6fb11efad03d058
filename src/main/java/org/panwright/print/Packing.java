package org.panwright.print;

import java.util.ArrayList;
import java.util.List;

/** Faces put side by side in rows, row under row, page after page, in their order. */
final class Packing {
  private Packing() {}

  /** A face and where its upper left corner lies. */
  record Placed(Face face, double xMm, double yMm) {
    /** The face's marks at their place. */
    List<Mark> marks() {
      return face.at(xMm, yMm);
    }

    /** The area it covers. */
    Area area() {
      return new Area(xMm, yMm, face.widthMm(), face.heightMm());
    }
  }

  /** The pages the faces take, at least one; every face must fit in {@code room}. */
  static List<List<Placed>> pages(Area room, double gapMm, List<Face> faces) {
    List<List<Placed>> pages = new ArrayList<>();
    List<Placed> page = new ArrayList<>();
    double x = room.xMm();
    double y = room.yMm();
    double rowMm = 0;
    for (Face face : faces) {
      if (x > room.xMm() && x + face.widthMm() > room.rightMm()) {
        x = room.xMm();
        y += rowMm + gapMm;
        rowMm = 0;
      }
      if (y > room.yMm() && y + face.heightMm() > room.bottomMm()) {
        pages.add(page);
        page = new ArrayList<>();
        x = room.xMm();
        y = room.yMm();
        rowMm = 0;
      }
      page.add(new Placed(face, x, y));
      x += face.widthMm() + gapMm;
      rowMm = Math.max(rowMm, face.heightMm());
    }
    pages.add(page);
    return pages;
  }
}
