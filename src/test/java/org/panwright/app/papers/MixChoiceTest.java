package org.panwright.app.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.kit.KeptMix;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.print.PaperFormat;

class MixChoiceTest {
  private Session session;
  private MixChoice choice;

  @BeforeEach
  void open() {
    session = Sessions.on(ThreePaintKit.kit());
    PapersModel model =
        new PapersModel(
            session,
            new PigmentLibrary(List.of()),
            PaperMemory.none(PaperFormat.A4),
            () -> LocalDate.of(2026, 11, 25),
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions::fail);
    choice = new MixChoice(model);
  }

  @Test
  void theUsefulOnesStandThereAtFirst() {
    assertThat(choice.isOwn()).isFalse();
    assertThat(choice.mixesProperty().get()).isNotEmpty();
  }

  @Test
  void oneTakenAwayIsGoneFromTheOrder() {
    KeptMix first = choice.mixesProperty().get().get(0);

    choice.remove(first);

    assertThat(choice.isOwn()).isTrue();
    assertThat(choice.mixesProperty().get()).doesNotContain(first);
    assertThat(kept()).doesNotContain(first);
    session.undo();
    assertThat(choice.isOwn()).isFalse();
  }

  @Test
  void oneAddedStandsLastAndOnlyOnce() {
    List<Paint> paints = choice.paints();
    choice.add(paints.get(0), paints.get(1), new Ratio(2, 1));
    choice.add(paints.get(0), paints.get(1), new Ratio(2, 1));

    assertThat(kept()).last().extracting(KeptMix::key).asString().contains("*2.0", "*1.0");
    assertThat(kept()).doesNotHaveDuplicates();
  }

  @Test
  void aPaintWithItselfIsNoMix() {
    Paint paint = choice.paints().get(0);

    choice.add(paint, paint, new Ratio(1, 1));

    assertThat(choice.isOwn()).isFalse();
  }

  @Test
  void theUsefulOnesComeBack() {
    List<KeptMix> useful = choice.mixesProperty().get();
    choice.remove(useful.get(0));

    choice.useUsual();

    assertThat(choice.mixesProperty().get()).isEqualTo(useful);
  }

  private List<KeptMix> kept() {
    return session.lineup().orElseThrow().cardMixes().orElseThrow();
  }
}
