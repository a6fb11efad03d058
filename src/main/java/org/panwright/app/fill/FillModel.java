package org.panwright.app.fill;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.panwright.analysis.arrange.FitCheck;
import org.panwright.analysis.compare.LineupPair;
import org.panwright.analysis.fill.FillPlan;
import org.panwright.analysis.fill.PaintPlaces;
import org.panwright.analysis.fill.PlannedWell;
import org.panwright.analysis.fill.Sharing;
import org.panwright.analysis.outing.NextOuting;
import org.panwright.analysis.outing.Refill;
import org.panwright.analysis.outing.Wear;
import org.panwright.app.Session;
import org.panwright.app.fx.FreshId;
import org.panwright.app.fx.Latest;
import org.panwright.kit.Box;
import org.panwright.kit.FilledWell;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;
import org.panwright.kit.PanKind;
import org.panwright.kit.Stock;
import org.panwright.kit.StockEdit;
import org.panwright.kit.Tube;
import org.panwright.paint.PigmentLibrary;

/** What the view of tubes and fillings shows, and what can be done there. */
public final class FillModel {
  /**
   * An outing and what it takes of each paint, in ml.
   *
   * @param use by paint id
   */
  record Taking(Outing outing, Map<String, Double> use) {}

  /**
   * The wells of a lineup that need paint before its next outing.
   *
   * @param last the last outing that is over and whose paint is still in the wells
   * @param next the next outing, if there is one
   * @param wells the wells
   */
  record Refills(
      String lineupId, Optional<Taking> last, Optional<Taking> next, List<Refill> wells) {}

  /** What takes longer than a blink: refills of the lineups ticked, and pairs of boxes. */
  record Further(List<Refills> refills, List<LineupPair> pairs) {
    static final Further NOTHING = new Further(List.of(), List.of());
  }

  private record Asked(Kit kit, List<String> lineups) {}

  private final Session session;
  private final PigmentLibrary library;
  private final Supplier<LocalDate> today;
  private final Consumer<RuntimeException> failures;
  private final Latest<Further> working;
  private final Set<String> left = new LinkedHashSet<>();
  private final ObjectProperty<Sharing> sharing = new SimpleObjectProperty<>(Sharing.EVENLY);
  private final ReadOnlyObjectWrapper<FillPlan> plan;
  private final ReadOnlyObjectWrapper<Further> further =
      new ReadOnlyObjectWrapper<>(Further.NOTHING);
  private Optional<Asked> asked = Optional.empty();
  private boolean shown = true;
  private boolean settled;

  /**
   * @param today the day fillings are dated with at first
   * @param away where refills and pairs are worked out
   * @param home the JavaFX thread
   * @param failures told of faults of the program
   */
  public FillModel(
      Session session,
      PigmentLibrary library,
      Supplier<LocalDate> today,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.library = library;
    this.today = today;
    this.failures = failures;
    working = new Latest<>(away, home);
    untickAllButOneOfEachBox();
    plan = new ReadOnlyObjectWrapper<>(planned());
    session.historyProperty().addListener(changed -> refresh());
    sharing.addListener(changed -> refresh());
    refresh();
  }

  /** The plan for the lineups ticked. */
  ReadOnlyObjectProperty<FillPlan> planProperty() {
    return plan.getReadOnlyProperty();
  }

  /** Refills and pairs; they may lag behind the kit for some frames. */
  ReadOnlyObjectProperty<Further> furtherProperty() {
    return further.getReadOnlyProperty();
  }

  /** How scarce paint is shared. */
  ObjectProperty<Sharing> sharingProperty() {
    return sharing;
  }

  /** Whether what is shown is of the kit as it is now. */
  public boolean isSettled() {
    return settled;
  }

  /** Says whether anybody looks; what takes long is worked out only then. */
  void setShown(boolean now) {
    shown = now;
    if (now) {
      refresh();
    } else {
      working.cancel();
      asked = settled ? asked : Optional.empty();
      settled = true;
    }
  }

  Kit kit() {
    return session.kit();
  }

  Stock stock() {
    return kit().stock();
  }

  LocalDate today() {
    return today.get();
  }

  /** Whether a lineup is in the plan. */
  boolean isTicked(String lineupId) {
    return !left.contains(lineupId);
  }

  /** Puts a lineup into the plan, or leaves it out. */
  void tick(String lineupId, boolean ticked) {
    if (ticked ? left.remove(lineupId) : left.add(lineupId)) {
      refresh();
    }
  }

  /** Where every paint is. */
  List<PaintPlaces> places() {
    return PaintPlaces.of(kit(), today());
  }

  /** How the pans of the boxes in the plan fit. */
  Map<Box, FitCheck> fits() {
    Map<Box, FitCheck> fits = new LinkedHashMap<>();
    for (Lineup lineup : kit().lineups()) {
      if (isTicked(lineup.id())) {
        Box box = kit().boxOf(lineup);
        fits.put(box, FitCheck.of(box, stock()));
      }
    }
    return fits;
  }

  /** Adds a tube. */
  void add(TubeDraft draft) {
    Set<String> taken = stock().tubes().stream().map(Tube::id).collect(Collectors.toSet());
    session.perform(new StockEdit.AddTube(draft.toTube(FreshId.of("tube", taken))));
  }

  /** Changes a tube. */
  void change(String tubeId, TubeDraft draft) {
    session.perform(new StockEdit.ChangeTube(draft.toTube(tubeId)));
  }

  /** Removes a tube. */
  void remove(String tubeId) {
    session.perform(new StockEdit.RemoveTube(tubeId));
  }

  /** Says what the prices are in. */
  void setCurrency(String currency) {
    session.perform(new StockEdit.SetCurrency(currency.strip()));
  }

  /** Marks wells of the plan as filled: those named, or all if none is. */
  void fill(List<PlannedWell> picked, LocalDate day) {
    Predicate<PlannedWell> done = well -> picked.isEmpty() || picked.contains(well);
    StockEdit.FillWells edit = plan.get().carriedOut(kit(), day, done);
    if (!edit.wells().isEmpty() || !edit.aside().isEmpty()) {
      session.perform(edit);
    }
  }

  /**
   * Marks wells as cleaned out, one step each; of a well whose own pan lies beside the box, or is
   * still to be filled beside that of another lineup, only that pan.
   */
  void clean(List<PlannedWell> picked) {
    for (PlannedWell well : picked) {
      if (well.beside()) {
        session.perform(new StockEdit.CleanAside(well.boxId(), well.wellId(), well.paintId()));
      } else if (!well.spare() || well.heldMl() > 0) {
        session.perform(new StockEdit.SetFilled(well.boxId(), well.wellId(), Optional.empty()));
      }
    }
  }

  /** Whether the pan of any of these wells lies beside its box. */
  static boolean isAnyBeside(List<PlannedWell> picked) {
    return picked.stream().anyMatch(PlannedWell::beside);
  }

  /** Puts pans that lie beside their boxes into the wells picked. */
  void exchange(List<PlannedWell> picked) {
    List<FilledWell> pans =
        picked.stream()
            .flatMap(w -> stock().aside(w.boxId(), w.wellId(), w.paintId()).stream())
            .toList();
    if (!pans.isEmpty()) {
      session.perform(new StockEdit.ExchangePans(pans));
    }
  }

  /** Takes what an outing used out of the wells of a lineup's box, once. */
  void wear(String lineupId, Taking taking) {
    Kit kit = kit();
    Optional<Outing> outing = kit.outing(taking.outing().id()).filter(it -> !it.paintTaken());
    Optional<Lineup> lineup = kit.lineup(lineupId);
    if (outing.isPresent() && lineup.isPresent()) {
      session.perform(Wear.edit(kit, lineup.get(), outing.get(), taking.use()));
    }
  }

  /** Adds a kind of pan. */
  void addPan(PanDraft draft) {
    Set<String> taken = stock().pans().stream().map(PanKind::id).collect(Collectors.toSet());
    List<PanKind> more = new ArrayList<>(stock().pans());
    more.add(draft.toPan(FreshId.of("pan", taken)));
    session.perform(new StockEdit.SetPans(more));
  }

  /** Changes a kind of pan. */
  void changePan(String panId, PanDraft draft) {
    session.perform(
        new StockEdit.SetPans(
            stock().pans().stream()
                .map(pan -> pan.id().equals(panId) ? draft.toPan(panId) : pan)
                .toList()));
  }

  /** Whether a kind of pan may go. */
  static boolean isNeeded(String panId) {
    return panId.equals(PanKind.FULL_ID) || panId.equals(PanKind.HALF_ID);
  }

  /** Removes a kind of pan; wells of that kind take the usual one. */
  void removePan(String panId) {
    session.perform(
        new StockEdit.SetPans(
            stock().pans().stream().filter(pan -> !pan.id().equals(panId)).toList()));
  }

  /** Changes a habit or a tolerance. */
  void perform(StockEdit edit) {
    session.perform(edit);
  }

  /** Of each box the first lineup is ticked at first, or the one looked at where it is for it. */
  private void untickAllButOneOfEachBox() {
    Map<String, String> ticked = new HashMap<>();
    session.lineup().ifPresent(lineup -> ticked.put(lineup.boxId(), lineup.id()));
    for (Lineup lineup : kit().lineups()) {
      if (!lineup.id().equals(ticked.computeIfAbsent(lineup.boxId(), box -> lineup.id()))) {
        left.add(lineup.id());
      }
    }
  }

  private FillPlan planned() {
    return FillPlan.of(kit(), ticked(), sharing.get());
  }

  private List<String> ticked() {
    return kit().lineups().stream().map(Lineup::id).filter(this::isTicked).toList();
  }

  private void refresh() {
    plan.set(planned());
    Asked now = new Asked(kit(), ticked());
    if (!shown || asked.equals(Optional.of(now))) {
      return;
    }
    asked = Optional.of(now);
    settled = false;
    LocalDate day = today();
    working.request(
        outdated -> workOut(now, day, outdated),
        found -> {
          further.set(found);
          settled = true;
        },
        failures);
  }

  private Further workOut(Asked now, LocalDate day, BooleanSupplier outdated) {
    List<Refills> refills = new ArrayList<>();
    for (String id : now.lineups()) {
      Function<Outing, Taking> taking =
          outing -> new Taking(outing, NextOuting.use(now.kit(), outing, library, outdated));
      Optional<Taking> last = NextOuting.last(now.kit(), id, day).map(taking);
      Optional<Taking> next = NextOuting.of(now.kit(), id, day).map(taking);
      Lineup lineup = now.kit().lineup(id).orElseThrow();
      Map<String, Double> use = next.map(Taking::use).orElse(Map.of());
      refills.add(new Refills(id, last, next, Refill.before(now.kit(), lineup, use)));
    }
    return new Further(refills, LineupPair.all(now.kit(), library, outdated));
  }
}
