package org.panwright.analysis.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.panwright.analysis.finding.AlsoSpare;
import org.panwright.analysis.finding.Finding;
import org.panwright.analysis.finding.Passenger;
import org.panwright.analysis.worth.Earning;
import org.panwright.analysis.worth.SubjectsLost;

/** Which of several spare paints are told, counted by hand. */
class SpareSearchTest {
  @Test
  void onlyTheBestTwoSparePaintsAreToldAndTheOthersNamedInOne() {
    List<Finding> four = Stream.of("a", "b", "c", "d").map(SpareSearchTest::passenger).toList();
    assertThat(SpareSearch.best(four, finding -> false))
        .containsExactly(four.get(0), four.get(1), new AlsoSpare(List.of("c", "d")));
    assertThat(SpareSearch.best(four.subList(0, 2), finding -> false))
        .isEqualTo(four.subList(0, 2));
  }

  @Test
  void aMutedSparePaintMakesRoomForTheNext() {
    List<Finding> four = Stream.of("a", "b", "c", "d").map(SpareSearchTest::passenger).toList();
    assertThat(SpareSearch.best(four, finding -> finding.key().equals("passenger:a")))
        .containsExactly(four.get(0), four.get(1), four.get(2), new AlsoSpare(List.of("d")));
  }

  private static Finding passenger(String id) {
    return new Passenger(new Earning(id, 0, 0, SubjectsLost.NONE), Optional.empty());
  }
}
