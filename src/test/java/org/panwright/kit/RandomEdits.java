package org.panwright.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.panwright.colour.Lab;
import org.panwright.colour.Spectrum;
import org.panwright.paint.CoatReading;
import org.panwright.paint.Granulation;
import org.panwright.paint.Handling;
import org.panwright.paint.Lightfastness;
import org.panwright.paint.Optics;
import org.panwright.paint.OpticsOrigin;
import org.panwright.paint.OpticsSource;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;
import org.panwright.paint.PaintedCoat;
import org.panwright.paint.Paper;
import org.panwright.paint.PigmentName;
import org.panwright.paint.PigmentShare;
import org.panwright.paint.Staining;
import org.panwright.paint.Transparency;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;

/** A painter who does anything at all that the kit in hand allows; the same seed does the same. */
public final class RandomEdits {
  private final Random random;
  private final List<Function<Kit, Optional<Edit>>> kinds =
      List.of(
          kit -> new RandomStockEdits(random()).next(kit, fresh("t")),
          this::placePaint,
          this::movePaint,
          this::emptyWell,
          this::setFill,
          kit -> Optional.of(new Edit.AddPaint(paint(fresh("p")))),
          kit ->
              Optional.of(new TableEdit(List.of(paint(fresh("p"))), List.of(), Optional.empty())),
          kit -> any(kit.shelf().paints()).map(p -> new Edit.ChangePaint(paint(p.id()))),
          kit -> any(kit.shelf().paints()).map(p -> new Edit.RemovePaint(p.id())),
          this::recordSwatch,
          this::removeSwatch,
          this::useOptics,
          this::learn,
          this::goBack,
          kit -> Optional.of(new Edit.AddBox(box(fresh("b")))),
          kit -> any(kit.boxes()).map(b -> new Edit.ChangeBox(box(b.id()))),
          kit -> rarely(any(kit.boxes()).map(b -> new Edit.RemoveBox(b.id()))),
          kit -> any(kit.boxes()).map(b -> new Edit.AddLineup(lineup(b.id()))),
          kit -> any(kit.lineups()).map(l -> new Edit.ChangeLineup(l.withName(fresh("name")))),
          kit -> rarely(any(kit.lineups()).map(l -> new Edit.RemoveLineup(l.id()))),
          kit -> any(kit.lineups()).map(l -> new Edit.MuteFinding(l.id(), fresh("f"), "why not")),
          kit ->
              any(kit.lineups())
                  .map(
                      l ->
                          new Edit.SetCardMixes(
                              l.id(),
                              Optional.of(
                                  List.of(
                                      new KeptMix(
                                          List.of(
                                              new KeptMix.Part(fresh("p"), 3),
                                              new KeptMix.Part(fresh("q"), 1)),
                                          Wash.MILK,
                                          "mud"))))),
          kit -> any(kit.lineups()).map(l -> new Edit.SetWishes(l.id(), wishes(kit))),
          kit ->
              any(kit.lineups())
                  .flatMap(l -> any(l.muted()).map(m -> new Edit.TellFinding(l.id(), m.key()))),
          kit ->
              any(kit.outings())
                  .map(
                      o ->
                          new Edit.SetSubjects(
                              o.id(),
                              List.of(
                                  new SubjectColour(
                                      fresh("sea"), new Lab(50, -9, -20), 0.25, "bay.jpg")))),
          kit -> Optional.of(new Edit.AddOuting(outing(fresh("o"), kit))),
          kit -> any(kit.outings()).map(o -> new Edit.ChangeOuting(outing(o.id(), kit))),
          kit -> any(kit.outings()).map(o -> new Edit.RemoveOuting(o.id())),
          kit ->
              Optional.of(new Edit.SetPaper(new Paper(fresh("paper"), Paper.WHITE.reflectance()))),
          kit -> Optional.of(new Edit.SetWashes(washes())),
          kit -> Optional.of(new Edit.RenameKit(fresh("kit"))));
  private int counter;

  /** A painter of this seed. */
  public RandomEdits(long seed) {
    random = new Random(seed);
  }

  private Random random() {
    return random;
  }

  /** An edit that fits {@code kit}. */
  public Edit next(Kit kit) {
    Optional<Edit> edit = Optional.empty();
    while (edit.isEmpty()) {
      edit = kinds.get(random.nextInt(kinds.size())).apply(kit);
    }
    return edit.get();
  }

  private Optional<Edit> placePaint(Kit kit) {
    Optional<Paint> paint = any(kit.shelf().paints());
    return any(kit.lineups())
        .flatMap(l -> paint.map(p -> new Edit.PlacePaint(l.id(), well(kit, l), p.id())));
  }

  private Optional<Edit> movePaint(Kit kit) {
    return any(kit.lineups()).map(l -> new Edit.MovePaint(l.id(), well(kit, l), well(kit, l)));
  }

  private Optional<Edit> emptyWell(Kit kit) {
    return any(kit.lineups()).map(l -> new Edit.EmptyWell(l.id(), well(kit, l)));
  }

  private Optional<Edit> setFill(Kit kit) {
    return any(kit.lineups())
        .map(l -> new Edit.SetFill(l.id(), well(kit, l), pick(List.of(Fill.values()))));
  }

  private String well(Kit kit, Lineup lineup) {
    return pick(kit.boxOf(lineup).wells()).id();
  }

  private Optional<Edit> recordSwatch(Kit kit) {
    return any(kit.shelf().paints()).map(p -> recorded(p.id()));
  }

  private SwatchEdit.RecordSwatches recorded(String paintId) {
    CoatReading read = new CoatReading.OfColour(new Lab(20 + random.nextInt(60), 9, -30));
    return new SwatchEdit.RecordSwatches(
        Map.of(
            paintId,
            List.of(PaintedCoat.of(fresh("coat"), read, PaintedCoat.Strength.WASH).withLoad(0.5))));
  }

  private Optional<Edit> removeSwatch(Kit kit) {
    return any(kit.shelf().paints())
        .flatMap(
            p ->
                any(p.swatchbook().coats())
                    .map(coat -> new SwatchEdit.RemoveSwatch(p.id(), coat.id())));
  }

  private Optional<Edit> useOptics(Kit kit) {
    return any(kit.shelf().paints()).map(p -> used(p.id()));
  }

  private SwatchEdit.UseOptics used(String paintId) {
    Optics optics =
        new Optics(
            Spectrum.flat(1 + random.nextInt(5)), Spectrum.flat(0.1), OpticsSource.SWATCHES, 3);
    return new SwatchEdit.UseOptics(
        Map.of(paintId, Optional.of(optics)),
        new OpticsOrigin(Optional.empty(), OpticsOrigin.Reason.FITTED, fresh("fit")));
  }

  private Optional<Edit> learn(Kit kit) {
    return any(kit.shelf().paints())
        .map(p -> new SwatchEdit.LearnPaints(recorded(p.id()), used(p.id())));
  }

  /** Never back to an estimate: the sample kit has a paint the library cannot estimate. */
  private Optional<Edit> goBack(Kit kit) {
    return any(kit.shelf().paints())
        .flatMap(
            p ->
                any(IntStream.range(0, p.swatchbook().former().size())
                        .filter(i -> p.swatchbook().former().get(i).optics().isPresent())
                        .boxed()
                        .toList())
                    .map(i -> new SwatchEdit.GoBack(p.id(), i)));
  }

  private LineupWishes wishes(Kit kit) {
    return new LineupWishes(
        random.nextInt(48),
        random.nextInt(12),
        Map.of(fresh("p"), pick(List.of(PaintWish.values()))),
        new PaintRules(random.nextBoolean(), true, false, Optional.of(Lightfastness.II)),
        Optional.of(1 + random.nextInt(8)),
        Weights.USUAL.with(pick(List.of(Aim.values())), random.nextInt(10)),
        any(kit.outings()).map(Outing::id));
  }

  private WashStrengths washes() {
    return new WashStrengths(List.of(0.6 + random.nextInt(30) / 10.0, 0.5, 0.25, 0.1, 0.05));
  }

  private Paint paint(String id) {
    return new Paint(
        id,
        fresh("paint"),
        "",
        List.of(new PigmentShare(PigmentName.of("PB29"), 1)),
        new Handling(Transparency.TRANSPARENT, Staining.LOW, Granulation.STRONG, Lightfastness.I),
        pick(List.of(Ownership.values())),
        Optional.empty(),
        "");
  }

  private Box box(String id) {
    return BoxPlan.ofHalfPans(1 + random.nextInt(2), 1 + random.nextInt(4), random.nextInt(3))
        .box(id);
  }

  private Lineup lineup(String boxId) {
    return new Lineup(fresh("l"), fresh("lineup"), boxId, Map.of());
  }

  private Outing outing(String id, Kit kit) {
    return new Outing(
        id,
        fresh("outing"),
        Optional.empty(),
        "",
        any(kit.lineups()).map(Lineup::id),
        random.nextInt(24),
        random.nextInt(9),
        List.of(new SubjectColour("sky", new Lab(80, -4, -12))));
  }

  private String fresh(String stem) {
    return stem + "-" + counter++;
  }

  private <T> Optional<T> any(List<T> list) {
    return list.isEmpty() ? Optional.empty() : Optional.of(pick(list));
  }

  private <T> T pick(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  /** One in four, so that boxes and lineups live long enough to be filled. */
  private Optional<Edit> rarely(Optional<Edit> edit) {
    return edit.filter(e -> random.nextInt(4) == 0);
  }

  /** The edits of a sequence, each fitting the kit the ones before it made. */
  public List<Edit> sequence(Kit start, int length) {
    List<Edit> edits = new ArrayList<>();
    Kit kit = start;
    for (int i = 0; i < length; i++) {
      Edit edit = next(kit);
      edits.add(edit);
      kit = edit.apply(kit);
    }
    return edits;
  }
}
