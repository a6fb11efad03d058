package org.panwright.app.share;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.panwright.app.BenchKit;
import org.panwright.app.Sessions;
import org.panwright.kit.table.TableColumn;
import org.panwright.kit.table.TablePlan;
import org.panwright.swatch.table.DelimitedText;
import org.panwright.swatch.table.TableFaultException;

class ImportModelTest {
  private static final String TABLE = "name;pigments;also\nDawn;PR101;PY43\n";

  private final Deque<Runnable> waiting = new ArrayDeque<>();
  private final ImportModel model = model();

  @Test
  void theFirstPlanIsThereAtOnce() {
    assertThat(waiting).isEmpty();
    assertThat(model.acceptable().get()).isTrue();
    assertThat(codes()).isEqualTo("PR101");
  }

  @Test
  void aChoiceIsWorkedOutAwayAndCannotBeTakenBefore() {
    TablePlan before = model.planProperty().get();
    choosePigments(2);
    assertThat(model.planProperty().get()).as("the old plan stays").isSameAs(before);
    assertThat(model.acceptable().get()).isFalse();
    work();
    assertThat(codes()).isEqualTo("PY43");
    assertThat(model.acceptable().get()).isTrue();
  }

  @Test
  void theNewestChoiceWins() {
    choosePigments(2);
    choosePigments(1);
    work();
    assertThat(codes()).isEqualTo("PR101");
    assertThat(model.settledProperty().get()).isTrue();
  }

  private void choosePigments(int place) {
    model
        .mappingProperty()
        .set(model.mappingProperty().get().with(TableColumn.PIGMENTS, Optional.of(place)));
  }

  private String codes() {
    return model.planProperty().get().rows().get(0).paints().get(0).codes();
  }

  private void work() {
    while (!waiting.isEmpty()) {
      waiting.remove().run();
    }
  }

  private ImportModel model() {
    try {
      return new ImportModel(
          DelimitedText.read(TABLE.getBytes(StandardCharsets.UTF_8)),
          BenchKit.kit(),
          Optional.empty(),
          BenchKit.LIBRARY,
          waiting::add,
          Sessions.AT_ONCE,
          Sessions::fail);
    } catch (TableFaultException e) {
      throw new AssertionError(e);
    }
  }
}
