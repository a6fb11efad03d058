package org.panwright.app.fill;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.fill.PlannedWell;
import org.panwright.analysis.judge.Judge;
import org.panwright.analysis.outing.Refill;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.kit.Edit;
import org.panwright.kit.FilledWell;
import org.panwright.kit.Kit;
import org.panwright.kit.PanKind;
import org.panwright.kit.Tube;
import org.panwright.store.DemoKit;
import org.panwright.store.PigmentLibraryReader;

class FillModelTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  private final Kit demo = DemoKit.read(PigmentLibraryReader.read());
  private final Session session =
      new Session(
          new Judge(PigmentLibraryReader.read()),
          task -> {},
          Sessions.AT_ONCE,
          Sessions::fail,
          demo);
  private final FillModel model = model();

  private FillModel model() {
    return new FillModel(
        session,
        PigmentLibraryReader.read(),
        () -> TODAY,
        Sessions.AT_ONCE,
        Sessions.AT_ONCE,
        Sessions::fail);
  }

  @Test
  void oneLineupOfEachBoxIsPlannedAtFirst() {
    assertThat(model.planProperty().get().lineupIds()).containsExactly("winter", "six");
    assertThat(model.isSettled()).isTrue();
  }

  @Test
  void theLineupLookedAtIsTheOnePlannedForItsBox() {
    session.look("quay");
    assertThat(model().planProperty().get().lineupIds()).containsExactlyInAnyOrder("quay", "six");
  }

  @Test
  void fillingTheWellsPickedFillsNoOther() {
    PlannedWell well = model.planProperty().get().toFill().get(0);
    model.fill(List.of(well), TODAY);
    FilledWell filled = model.stock().in(well.boxId(), well.wellId()).orElseThrow();
    assertThat(filled.paintId()).isEqualTo(well.paintId());
    assertThat(filled.filledOn()).isEqualTo(TODAY);
    assertThat(model.stock().filled()).hasSameSizeAs(demo.stock().filled());
    session.undo();
    assertThat(session.kit()).isEqualTo(demo);
  }

  @Test
  void whatIsFilledIsNotPlannedAgain() {
    model.fill(List.of(), TODAY);
    assertThat(model.planProperty().get().toFill()).isEmpty();
    assertThat(model.stock().tubes()).allSatisfy(tube -> assertThat(tube.leftMl()).isNotNegative());
  }

  @Test
  void aTubeAddedTypedWithACommaIsInTheStockAndUndone() {
    TubeDraft draft = new TubeDraft("violet", "7,5", false, "7,5", "", "", "1.3", "9,90", "", "");
    model.add(draft);
    assertThat(model.stock().tubesOf("violet")).extracting(Tube::sizeMl).containsExactly(7.5);
    session.undo();
    assertThat(model.stock().tubesOf("violet")).isEmpty();
  }

  @Test
  void theNextOutingIsCountedIntoTheRefills() {
    model.tick("winter", false);
    model.tick("quay", true);
    FillModel.Refills quay =
        model.furtherProperty().get().refills().stream()
            .filter(refills -> refills.lineupId().equals("quay"))
            .findFirst()
            .orElseThrow();
    FillModel.Taking next = quay.next().orElseThrow();
    assertThat(next.use()).isNotEmpty();
    assertThat(quay.wells()).extracting(Refill::why).contains(Refill.Why.EMPTY);
    double before = model.stock().in("tin", "well-1").orElseThrow().leftMl();
    model.wear("quay", next);
    double worn = model.stock().in("tin", "well-1").orElseThrow().leftMl();
    assertThat(worn).isLessThan(before);
    model.wear("quay", next);
    assertThat(model.stock().in("tin", "well-1").orElseThrow().leftMl())
        .as("pressed again")
        .isEqualTo(worn);
    assertThat(model.furtherProperty().get().refills())
        .as("an outing whose paint was taken is not taken along again")
        .allMatch(refills -> refills.next().isEmpty());
    session.undo();
    assertThat(model.stock().in("tin", "well-1").orElseThrow().leftMl()).isEqualTo(before);
    model.wear("quay", next);
    assertThat(model.stock().in("tin", "well-1").orElseThrow().leftMl()).isEqualTo(worn);
  }

  /** Both lineups of the tin want well 1, with other paints: one pan in it, one beside it. */
  @Test
  void theSecondPanOfAWellIsRememberedAndExchanged() {
    model.tick("quay", true);
    PlannedWell second =
        model.planProperty().get().wells().stream()
            .filter(well -> well.spare() && well.givenMl() > 0 && well.panId().isPresent())
            .findFirst()
            .orElseThrow();
    model.fill(List.of(), LocalDate.of(2026, 5, 1));
    FilledWell aside =
        model.stock().aside(second.boxId(), second.wellId(), second.paintId()).orElseThrow();
    FilledWell inIt = model.stock().in(second.boxId(), second.wellId()).orElseThrow();
    assertThat(inIt.paintId()).isNotEqualTo(second.paintId());
    PlannedWell planned = planned(second);
    assertThat(planned.beside()).isTrue();
    assertThat(planned.heldMl()).isEqualTo(aside.leftMl());
    model.exchange(List.of(planned));
    assertThat(model.stock().in(second.boxId(), second.wellId())).hasValue(aside);
    assertThat(model.stock().aside(second.boxId(), second.wellId(), inIt.paintId())).hasValue(inIt);
    assertThat(model.stock().aside(second.boxId(), second.wellId(), second.paintId())).isEmpty();
    session.undo();
    model.clean(List.of(planned(second)));
    assertThat(model.stock().aside(second.boxId(), second.wellId(), second.paintId())).isEmpty();
    assertThat(model.stock().in(second.boxId(), second.wellId())).hasValue(inIt);
  }

  private PlannedWell planned(PlannedWell like) {
    return model.planProperty().get().wells().stream()
        .filter(well -> well.lineupId().equals(like.lineupId()))
        .filter(well -> well.wellId().equals(like.wellId()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aKindOfPanOfOnesOwnComesAndGoes() {
    PanDraft draft = PanDraft.of(PanKind.USUAL.get(0));
    model.addPan(draft);
    assertThat(model.stock().pans()).hasSize(5);
    model.removePan(model.stock().pans().get(4).id());
    assertThat(model.stock().pans()).isEqualTo(PanKind.USUAL);
  }

  @Test
  void cleaningAWellOutEmptiesIt() {
    PlannedWell held =
        model.planProperty().get().wells().stream()
            .filter(well -> well.heldMl() > 0)
            .findFirst()
            .orElseThrow();
    model.clean(List.of(held));
    assertThat(model.stock().in(held.boxId(), held.wellId())).isEmpty();
  }

  @Test
  void pairsOfBoxesAreWorkedOut() {
    assertThat(model.furtherProperty().get().pairs()).hasSize(2);
  }

  @Test
  void whileNobodyLooksNothingLongIsWorkedOut() {
    model.setShown(false);
    FillModel.Further before = model.furtherProperty().get();
    session.perform(new Edit.RemoveLineup("six"));
    assertThat(model.furtherProperty().get()).isSameAs(before);
    assertThat(model.isSettled()).isTrue();
    model.setShown(true);
    assertThat(model.furtherProperty().get().pairs()).isEmpty();
  }
}
