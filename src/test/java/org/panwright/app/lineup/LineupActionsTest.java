package org.panwright.app.lineup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.dialogs.ScriptedDialogs;
import org.panwright.kit.BoxPlan;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.words.DialogWords;
import org.panwright.words.LineupWords;

class LineupActionsTest {
  private final Session session = Sessions.on(Kit.empty("new"));
  private final ScriptedDialogs dialogs = new ScriptedDialogs();
  private final List<String> made = new ArrayList<>();
  private final LineupActions actions =
      new LineupActions(session, new LineupModel(session), dialogs, () -> made.add("box"));

  @Test
  void withoutABoxALineupLeadsToMakingOne() {
    dialogs.answer(LineupWords.MAKE_BOX);
    actions.add();
    assertThat(made).containsExactly("box");
    assertThat(dialogs.said()).singleElement().asString().contains("box comes first");
  }

  @Test
  void orToNothing() {
    dialogs.answer(DialogWords.LEAVE);
    actions.add();
    assertThat(made).isEmpty();
    assertThat(session.kit()).isEqualTo(Kit.empty("new"));
  }

  @Test
  void theFirstBoxBringsALineupAndFurtherOnesDoNot() {
    session.perform(new Edit.AddBox(BoxPlan.ALL.get(0)));
    actions.startWith(BoxPlan.ALL.get(0));
    assertThat(session.lineup()).map(Lineup::boxId).contains(BoxPlan.ALL.get(0).id());
    actions.startWith(BoxPlan.ALL.get(0));
    assertThat(session.kit().lineups()).hasSize(1);
    session.undo();
    session.undo();
    assertThat(session.kit()).isEqualTo(Kit.empty("new"));
  }
}
