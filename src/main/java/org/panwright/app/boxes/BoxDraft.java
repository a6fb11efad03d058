package org.panwright.app.boxes;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.panwright.app.fx.FreshId;
import org.panwright.kit.Box;
import org.panwright.kit.Fixture;
import org.panwright.kit.Well;
import org.panwright.words.BoxEditorWords;

/**
 * A box while it is being edited; it may be wrong, and says how.
 *
 * @param id the box's id in the kit
 * @param widthMm NaN while what is typed is no number; likewise the other sizes
 * @param depthMm empty if not measured
 * @param parts mixing areas, strips, magnets and clips
 */
record BoxDraft(
    String id,
    String name,
    double widthMm,
    double heightMm,
    double lidWidthMm,
    double lidHeightMm,
    List<WellDraft> wells,
    OptionalDouble depthMm,
    List<PartDraft> parts) {
  private static final double LEAST_MM = 10;
  private static final double MOST_MM = 1000;

  BoxDraft {
    wells = List.copyOf(wells);
    parts = List.copyOf(parts);
  }

  static BoxDraft of(Box box) {
    return new BoxDraft(
        box.id(),
        box.name(),
        box.widthMm(),
        box.heightMm(),
        box.lidWidthMm(),
        box.lidHeightMm(),
        box.wells().stream().map(WellDraft::of).toList(),
        box.depthMm(),
        box.fixtures().stream().map(PartDraft::of).toList());
  }

  /** The first thing that is not right, as a sentence; empty if it can be a box. */
  Optional<String> problem() {
    if (name.isBlank()) {
      return Optional.of(BoxEditorWords.NAME_NEEDED);
    }
    if (!isSize(widthMm) || !isSize(heightMm)) {
      return Optional.of(BoxEditorWords.BOX_SIZE);
    }
    if (!isSize(lidWidthMm) || !isSize(lidHeightMm)) {
      return Optional.of(BoxEditorWords.LID_SIZE);
    }
    if (wells.isEmpty()) {
      return Optional.of(BoxEditorWords.WELL_NEEDED);
    }
    Optional<String> wrongWell =
        wells.stream().flatMap(well -> wellProblem(well).stream()).findFirst();
    if (wrongWell.isPresent()) {
      return wrongWell;
    }
    boolean deep =
        depthMm.isEmpty() || (depthMm.getAsDouble() >= 2 && depthMm.getAsDouble() <= 100);
    return deep
        ? parts.stream().flatMap(part -> partProblem(part).stream()).findFirst()
        : Optional.of(BoxEditorWords.BOX_DEPTH);
  }

  /** What is not right with a mixing area, strip, magnet or clip. */
  Optional<String> partProblem(PartDraft part) {
    if (!part.isSized()) {
      return Optional.of(BoxEditorWords.partSize(part.kind()));
    }
    Fixture fixture = part.toFixture();
    if (!fixture.liesWithin(
        part.inLid() ? lidWidthMm : widthMm, part.inLid() ? lidHeightMm : heightMm)) {
      return Optional.of(BoxEditorWords.partOutside(part.kind(), part.inLid()));
    }
    return wells.stream()
        .filter(well -> wellProblem(well).isEmpty() && fixture.bars(well.toWell()))
        .findFirst()
        .map(well -> BoxEditorWords.partUnder(part.kind(), well.label()));
  }

  /** What is not right with one well. */
  Optional<String> wellProblem(WellDraft well) {
    if (well.label().isBlank()) {
      return Optional.of(BoxEditorWords.LABEL_NEEDED);
    }
    boolean sized =
        well.widthMm() >= 2
            && well.widthMm() <= 200
            && well.heightMm() >= 2
            && well.heightMm() <= 200;
    if (!sized) {
      return Optional.of(BoxEditorWords.wellSize(well.label()));
    }
    boolean inside =
        well.xMm() >= 0
            && well.yMm() >= 0
            && well.xMm() + well.widthMm() <= widthMm + 0.01
            && well.yMm() + well.heightMm() <= heightMm + 0.01;
    if (!inside) {
      return Optional.of(BoxEditorWords.outside(well.label()));
    }
    return wells.stream()
        .filter(other -> !other.id().equals(well.id()) && other.overlaps(well))
        .findFirst()
        .map(other -> BoxEditorWords.overlap(well.label(), other.label()));
  }

  /** The box, if nothing is wrong with it. */
  Optional<Box> toBox() {
    if (problem().isPresent()) {
      return Optional.empty();
    }
    List<Well> made = wells.stream().map(WellDraft::toWell).toList();
    return Optional.of(
        new Box(
            id,
            name.strip(),
            widthMm,
            heightMm,
            lidWidthMm,
            lidHeightMm,
            made,
            depthMm,
            parts.stream().map(PartDraft::toFixture).toList()));
  }

  BoxDraft named(String changed) {
    return new BoxDraft(
        id, changed, widthMm, heightMm, lidWidthMm, lidHeightMm, wells, depthMm, parts);
  }

  /** The draft of another size; a lid that was as large as the box goes with it. */
  BoxDraft sized(double width, double height) {
    double lidWidth = Double.compare(lidWidthMm, widthMm) == 0 ? width : lidWidthMm;
    double lidHeight = Double.compare(lidHeightMm, heightMm) == 0 ? height : lidHeightMm;
    return new BoxDraft(id, name, width, height, lidWidth, lidHeight, wells, depthMm, parts);
  }

  BoxDraft withLid(double width, double height) {
    return new BoxDraft(id, name, widthMm, heightMm, width, height, wells, depthMm, parts);
  }

  BoxDraft withWells(List<WellDraft> changed) {
    return new BoxDraft(
        id, name, widthMm, heightMm, lidWidthMm, lidHeightMm, changed, depthMm, parts);
  }

  BoxDraft withDepth(OptionalDouble changed) {
    return new BoxDraft(
        id, name, widthMm, heightMm, lidWidthMm, lidHeightMm, wells, changed, parts);
  }

  BoxDraft withParts(List<PartDraft> changed) {
    return new BoxDraft(
        id, name, widthMm, heightMm, lidWidthMm, lidHeightMm, wells, depthMm, changed);
  }

  /** The draft with one part changed. */
  BoxDraft changingPart(String partId, UnaryOperator<PartDraft> change) {
    return withParts(parts.stream().map(p -> p.id().equals(partId) ? change.apply(p) : p).toList());
  }

  BoxDraft withoutPart(String partId) {
    return withParts(parts.stream().filter(p -> !p.id().equals(partId)).toList());
  }

  Optional<PartDraft> findPart(String partId) {
    return parts.stream().filter(p -> p.id().equals(partId)).findFirst();
  }

  /** An id no part has. */
  String freshPartId() {
    return FreshId.of("part", parts.stream().map(PartDraft::id).collect(Collectors.toSet()));
  }

  /** The draft with one well changed. */
  BoxDraft changing(String wellId, UnaryOperator<WellDraft> change) {
    return withWells(wells.stream().map(w -> w.id().equals(wellId) ? change.apply(w) : w).toList());
  }

  BoxDraft without(String wellId) {
    return withWells(wells.stream().filter(w -> !w.id().equals(wellId)).toList());
  }

  BoxDraft with(WellDraft well) {
    List<WellDraft> more = new ArrayList<>(wells);
    more.add(well);
    return withWells(more);
  }

  Optional<WellDraft> find(String wellId) {
    return wells.stream().filter(w -> w.id().equals(wellId)).findFirst();
  }

  /** An id no well has. */
  String freshWellId() {
    return FreshId.of("well", wells.stream().map(WellDraft::id).collect(Collectors.toSet()));
  }

  /** The smallest number no well is labelled with. */
  String freshLabel() {
    Set<String> taken = new HashSet<>();
    wells.forEach(well -> taken.add(well.label().strip()));
    int number = 1;
    while (taken.contains(Integer.toString(number))) {
      number++;
    }
    return Integer.toString(number);
  }

  private static boolean isSize(double mm) {
    return mm >= LEAST_MM && mm <= MOST_MM;
  }
}
