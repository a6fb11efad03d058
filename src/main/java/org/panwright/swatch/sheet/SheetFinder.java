package org.panwright.swatch.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.Point;

/**
 * Looks for a sheet of ours in a picture: a hollow square and three solid ones of the sizes their
 * places ask for, from which the code at the sheet's head can be read.
 *
 * <p>The code's check decides, once its squares are clearly black or white: among the thousands of
 * fours in a photo of anything else, the check alone holds for some by chance. Where none can be
 * read, the best four squares are answered without a code, to be put right by hand.
 */
public final class SheetFinder {
  private static final int LEAST_MARK = 36;
  private static final double LARGEST_MARK = 1.0 / 100;
  private static final double SLIM = 2.2;
  private static final int MOST_SQUARES = 40;
  private static final double LIKE_SIZE = 4;
  private static final double LEAST_TURN = 0.1;

  /** All four marks together, in ln of their size: half as large again or two thirds of each. */
  private static final double MOST_MISFIT = 4 * 0.4;

  private static final int MOST_UNCLEAR = 3;

  /** (7² + 2.8²) / (7² − 2.8²). */
  private static final double HOLLOW = 1.38;

  private final Picture picture;
  private final SmallGrey small;

  private SheetFinder(Picture picture) {
    this.picture = picture;
    small = new SmallGrey(picture);
  }

  /** The sheet, if there is one. */
  public static Optional<FoundSheet> find(Picture picture) {
    return new SheetFinder(picture).search();
  }

  /** The code of a sheet whose corners were put right by hand. */
  public static Optional<PageCode> code(Picture picture, FoundSheet sheet) {
    return sheet
        .place()
        .flatMap(
            place ->
                CodeReader.squares(
                    picture, place, new SheetPlan(sheet.format()).pageCells(), MOST_UNCLEAR))
        .flatMap(PageCode::of)
        .filter(code -> code.format() == sheet.format());
  }

  private Optional<FoundSheet> search() {
    int most = (int) (LARGEST_MARK * small.width * small.height);
    List<Blot> blots =
        Blot.in(small, LEAST_MARK, most).stream()
            .filter(blot -> blot.slimness() < SLIM)
            .sorted(Comparator.comparingDouble(blot -> -blot.area()))
            .toList();
    List<Blot> solids = blots.stream().filter(SheetFinder::isSolid).limit(MOST_SQUARES).toList();
    List<Blot> hollows = blots.stream().filter(SheetFinder::isHollow).limit(MOST_SQUARES).toList();
    Optional<FoundSheet> guess = Optional.empty();
    double best = MOST_MISFIT;
    for (Blot hollow : hollows) {
      List<Blot> like =
          solids.stream().filter(solid -> areAlike(solid.area(), hollow.area())).toList();
      for (List<Blot> marks : quadrilaterals(hollow, like)) {
        List<Point> corners = marks.stream().map(Blot::middle).map(this::inPicture).toList();
        for (SheetFormat format : SheetFormat.values()) {
          FoundSheet sheet = new FoundSheet(format, corners, Optional.empty());
          double misfit = misfit(sheet, marks);
          Optional<PageCode> code = misfit < MOST_MISFIT ? code(picture, sheet) : Optional.empty();
          if (code.isPresent()) {
            return Optional.of(new FoundSheet(format, corners, code));
          }
          if (misfit < best) {
            best = misfit;
            guess = Optional.of(sheet);
          }
        }
      }
    }
    return guess;
  }

  private static boolean isSolid(Blot blot) {
    return blot.solidity() > 0.93 && blot.solidity() < 1.12;
  }

  private static boolean isHollow(Blot blot) {
    return Math.abs(blot.solidity() - HOLLOW) < 0.2;
  }

  private static boolean areAlike(double solid, double hollow) {
    double ratio = solid / hollow;
    return ratio < LIKE_SIZE && ratio > 1 / LIKE_SIZE;
  }

  /** The hollow square with each three solid ones that go round clockwise without a dent. */
  private static List<List<Blot>> quadrilaterals(Blot hollow, List<Blot> solids) {
    List<List<Blot>> found = new ArrayList<>();
    for (int i = 0; i < solids.size(); i++) {
      for (int j = 0; j < solids.size(); j++) {
        for (int k = 0; k < solids.size(); k++) {
          if (i != j && j != k && i != k) {
            List<Blot> marks = List.of(hollow, solids.get(i), solids.get(j), solids.get(k));
            List<Point> round = marks.stream().map(Blot::middle).toList();
            if (Homography.isRoundabout(round, LEAST_TURN) && isSized(round, hollow)) {
              found.add(marks);
            }
          }
        }
      }
    }
    return found;
  }

  /** A mark takes between 1/3000 and 1/250 of the area between the four. */
  private static boolean isSized(List<Point> round, Blot hollow) {
    double area = 0;
    for (int i = 0; i < 4; i++) {
      Point p = round.get(i);
      Point q = round.get((i + 1) % 4);
      area += (p.x() * q.y() - q.x() * p.y()) / 2;
    }
    double share = hollow.area() / area;
    return share > 1.0 / 3000 && share < 1.0 / 250;
  }

  /** How far the sizes of the marks are from those their places on the sheet ask for. */
  private double misfit(FoundSheet sheet, List<Blot> marks) {
    Optional<Homography> place = sheet.place();
    if (place.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    List<Point> corners = new SheetPlan(sheet.format()).corners();
    double misfit = 0;
    for (int i = 0; i < marks.size(); i++) {
      double side = place.get().scaleAt(corners.get(i)) / small.step;
      double hole = i == 0 ? SheetPlan.HOLLOW_MM * SheetPlan.HOLLOW_MM : 0;
      double ink = SheetPlan.MARK_MM * SheetPlan.MARK_MM - hole;
      misfit += Math.abs(Math.log(marks.get(i).area() / (side * side * ink)));
    }
    return misfit;
  }

  private Point inPicture(Point inSmall) {
    return new Point(inSmall.x() * small.step, inSmall.y() * small.step);
  }
}
