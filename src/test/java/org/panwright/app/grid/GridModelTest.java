package org.panwright.app.grid;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.Edit;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Wash;

class GridModelTest {
  private Session session;
  private GridModel model;

  @BeforeEach
  void open() {
    session = Sessions.on(ThreePaintKit.kit());
    model = new GridModel(session, Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail);
  }

  @Test
  void rowsFollowTheWells() {
    assertThat(model.picture().heads())
        .extracting(GridPicture.Head::well, GridPicture.Head::name, GridPicture.Head::codes)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("1", "yellow", "PY154"),
            org.assertj.core.groups.Tuple.tuple("2", "blue", "PB15:3"));
  }

  @Test
  void leaningHalvesLeanToTheirRow() {
    assertThat(Ratio.GRID.get(model.picture().cell(0, 1).ratio())).isEqualTo(new Ratio(3, 1));
    assertThat(Ratio.GRID.get(model.picture().cell(1, 0).ratio())).isEqualTo(new Ratio(3, 1));
    assertThat(model.picture().cell(0, 1).colour())
        .isNotEqualTo(model.picture().cell(1, 0).colour());
  }

  @Test
  void strongHalfLiesAboveTheThinOne() {
    model.readingProperty().set(Reading.STRONG_AND_THIN);

    assertThat(model.picture().cell(0, 1).wash()).isEqualTo(Wash.BUTTER);
    assertThat(model.picture().cell(1, 0).wash()).isEqualTo(Wash.COFFEE);
    assertThat(model.picture().cell(0, 1).ratio()).isEqualTo(Ratio.EVEN);
    double strong = model.picture().cell(0, 1).colour().shown().toXyzD65().y();
    double thin = model.picture().cell(1, 0).colour().shown().toXyzD65().y();
    assertThat(thin).isGreaterThan(strong);
  }

  @Test
  void previewAddsAFreshRowAndTakesItAwayAgain() {
    session.preview(new Edit.PlacePaint(ThreePaintKit.LINEUP, "w3", "red"));

    assertThat(model.picture().trial()).isTrue();
    assertThat(model.picture().heads())
        .extracting(GridPicture.Head::fresh)
        .containsExactly(false, false, true);

    session.endPreview();
    assertThat(model.picture().trial()).isFalse();
    assertThat(model.picture().size()).isEqualTo(2);
  }

  @Test
  void pickingACellSelectsItsMix() {
    model.pick(1, 0);

    assertThat(session.selectionProperty().get())
        .isEqualTo(new Selection.OfMix("blue", "yellow", Ratio.GRID.indexOf(new Ratio(3, 1))));
    assertThat(model.picked()).hasValueSatisfying(at -> assertThat(at).containsExactly(1, 0));
  }

  @Test
  void arrowsStayWithinTheGrid() {
    model.step(0, 1);
    assertThat(model.picked()).hasValueSatisfying(at -> assertThat(at).containsExactly(0, 0));

    model.step(-1, 0);
    model.step(0, 9);
    assertThat(model.picked()).hasValueSatisfying(at -> assertThat(at).containsExactly(0, 1));
  }

  @Test
  void emptyLineupHasAnEmptyGrid() {
    session.perform(new Edit.EmptyWell(ThreePaintKit.LINEUP, "w1"));
    session.perform(new Edit.EmptyWell(ThreePaintKit.LINEUP, "w2"));
    model.step(1, 1);

    assertThat(model.picture().size()).isZero();
    assertThat(session.selectionProperty().get()).isEqualTo(Selection.NOTHING);
  }
}
