package org.panwright.app;

import java.util.function.Consumer;
import org.panwright.app.arrange.LineupArranger;
import org.panwright.app.boxes.BoxEditor;
import org.panwright.app.ground.GroundEditor;
import org.panwright.app.lineup.LineupActions;
import org.panwright.app.paint.PaintEditor;

/** The editors of this window behind one door. */
record EditorDesk(
    PaintEditor paints,
    BoxEditor boxes,
    LineupActions lineups,
    LineupArranger arranger,
    GroundEditor ground,
    Consumer<String> pages,
    Runnable plan)
    implements Editors {
  @Override
  public void openPage(String paintId) {
    pages.accept(paintId);
  }

  @Override
  public void openPlan() {
    plan.run();
  }

  @Override
  public void addPaint() {
    paints.add();
  }

  @Override
  public void editPaint(String paintId) {
    paints.edit(paintId);
  }

  @Override
  public void duplicatePaint(String paintId) {
    paints.duplicate(paintId);
  }

  @Override
  public void removePaint(String paintId) {
    paints.remove(paintId);
  }

  @Override
  public void addBox() {
    boxes.add();
  }

  @Override
  public void editBox(String boxId) {
    boxes.edit(boxId);
  }

  @Override
  public void addLineup() {
    lineups.add();
  }

  @Override
  public void arrangeLineup() {
    arranger.open();
  }

  @Override
  public void editPaperAndWashes() {
    ground.open();
  }
}
