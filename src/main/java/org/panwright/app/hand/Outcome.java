package org.panwright.app.hand;

import java.util.Optional;
import org.panwright.kit.Box;
import org.panwright.kit.Edit;
import org.panwright.kit.Filling;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.paint.Paint;
import org.panwright.words.HandWords;

/** What putting down at a spot would bring: the edit, and how to say it before and after. */
public sealed interface Outcome {
  /** What the kit goes through; empty if all stays as it is. */
  Optional<Edit> edit();

  /** A few words to stand at the spot. */
  String hint();

  /** The sentence while it is still to come. */
  String promise();

  /** The sentence once it is done. */
  String report();

  /**
   * The outcome of putting {@code held} down at {@code spot}; empty if the lineup has no such
   * paint, well or filling (any more).
   */
  static Optional<Outcome> of(Kit kit, Lineup lineup, Held held, Spot spot) {
    Box box = kit.boxOf(lineup);
    if (held instanceof Held.FromShelf fromShelf) {
      Optional<Paint> paint = kit.shelf().find(fromShelf.paintId());
      if (spot instanceof Spot.AtWell at) {
        return paint.flatMap(p -> box.find(at.wellId()).map(w -> placing(kit, lineup, p, w)));
      }
      return paint.map(Stay::onShelf);
    }
    String fromId = ((Held.FromWell) held).wellId();
    Optional<Well> from = box.find(fromId);
    Optional<Paint> paint = paintIn(kit, lineup, fromId);
    if (from.isEmpty() || paint.isEmpty()) {
      return Optional.empty();
    }
    if (spot instanceof Spot.AtWell at) {
      return box.find(at.wellId()).map(to -> moving(kit, lineup, paint.get(), from.get(), to));
    }
    return Optional.of(new TakeOut(lineup, paint.get(), from.get()));
  }

  /** The paint in a well of a lineup. */
  static Optional<Paint> paintIn(Kit kit, Lineup lineup, String wellId) {
    return lineup.in(wellId).map(Filling::paintId).flatMap(kit.shelf()::find);
  }

  private static Outcome placing(Kit kit, Lineup lineup, Paint paint, Well well) {
    Optional<Paint> there = paintIn(kit, lineup, well.id());
    if (there.isEmpty()) {
      return new Place(lineup, paint, well);
    }
    return there.get().id().equals(paint.id())
        ? Stay.inWell(paint, well)
        : new Replace(lineup, paint, there.get(), well);
  }

  private static Outcome moving(Kit kit, Lineup lineup, Paint paint, Well from, Well to) {
    if (from.id().equals(to.id())) {
      return Stay.inWell(paint, to);
    }
    return paintIn(kit, lineup, to.id())
        .<Outcome>map(other -> new Swap(lineup, paint, from, other, to))
        .orElseGet(() -> new Move(lineup, paint, from, to));
  }

  /** A shelf paint fills an empty well. */
  record Place(Lineup lineup, Paint paint, Well well) implements Outcome {
    @Override
    public Optional<Edit> edit() {
      return Optional.of(new Edit.PlacePaint(lineup.id(), well.id(), paint.id()));
    }

    @Override
    public String hint() {
      return HandWords.hintPlace(paint);
    }

    @Override
    public String promise() {
      return HandWords.willPlace(paint, well);
    }

    @Override
    public String report() {
      return HandWords.placed(paint, well);
    }
  }

  /** A shelf paint takes the well of another. */
  record Replace(Lineup lineup, Paint paint, Paint out, Well well) implements Outcome {
    @Override
    public Optional<Edit> edit() {
      return Optional.of(new Edit.PlacePaint(lineup.id(), well.id(), paint.id()));
    }

    @Override
    public String hint() {
      return HandWords.hintReplace(out);
    }

    @Override
    public String promise() {
      return HandWords.willReplace(paint, out, well);
    }

    @Override
    public String report() {
      return HandWords.replaced(paint, out, well);
    }
  }

  /** A paint goes to an empty well. */
  record Move(Lineup lineup, Paint paint, Well from, Well to) implements Outcome {
    @Override
    public Optional<Edit> edit() {
      return Optional.of(new Edit.MovePaint(lineup.id(), from.id(), to.id()));
    }

    @Override
    public String hint() {
      return HandWords.hintMove();
    }

    @Override
    public String promise() {
      return HandWords.willMove(paint, from, to);
    }

    @Override
    public String report() {
      return HandWords.moved(paint, to);
    }
  }

  /** Two paints change places. */
  record Swap(Lineup lineup, Paint paint, Well from, Paint other, Well to) implements Outcome {
    @Override
    public Optional<Edit> edit() {
      return Optional.of(new Edit.MovePaint(lineup.id(), from.id(), to.id()));
    }

    @Override
    public String hint() {
      return HandWords.hintSwap(other);
    }

    @Override
    public String promise() {
      return HandWords.willSwap(paint, from, other, to);
    }

    @Override
    public String report() {
      return HandWords.swapped(paint, to, other, from);
    }
  }

  /** A paint leaves its well for the shelf. */
  record TakeOut(Lineup lineup, Paint paint, Well from) implements Outcome {
    @Override
    public Optional<Edit> edit() {
      return Optional.of(new Edit.EmptyWell(lineup.id(), from.id()));
    }

    @Override
    public String hint() {
      return HandWords.hintTakeOut(paint);
    }

    @Override
    public String promise() {
      return HandWords.willTakeOut(paint, from);
    }

    @Override
    public String report() {
      return HandWords.takenOut(paint, from);
    }
  }

  /** Nothing changes. */
  record Stay(String hint, String promise, String report) implements Outcome {
    static Stay inWell(Paint paint, Well well) {
      String stays = HandWords.staysInWell(paint, well);
      return new Stay(HandWords.hintStay(), stays, stays);
    }

    static Stay onShelf(Paint paint) {
      return new Stay(HandWords.hintStay(), HandWords.staysOnShelf(paint), HandWords.putBack());
    }

    @Override
    public Optional<Edit> edit() {
      return Optional.empty();
    }
  }
}
