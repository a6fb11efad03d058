package org.panwright.app;

/**
 * What any view may ask the window to open: the editors of the things in the kit.
 *
 * <p>Every call returns at once or after the painter closed the editor; what was changed arrives
 * through {@link Session}.
 */
public interface Editors {
  /** Opens the paint editor on a new paint for the shelf. */
  void addPaint();

  /** Opens the paint editor on a paint of the shelf. */
  void editPaint(String paintId);

  /** Shows the page of a paint: its swatches, its curves, where its colour comes from. */
  void openPage(String paintId);

  /** Shows the plan, where a mix or a colour that is picked is seen large. */
  void openPlan();

  /** Opens the paint editor on a copy of a paint of the shelf. */
  void duplicatePaint(String paintId);

  /** Takes a paint off the shelf, asking first if it sits in a well. */
  void removePaint(String paintId);

  /** Opens the box editor on a new box. */
  void addBox();

  /** Opens the box editor on a box of the kit. */
  void editBox(String boxId);

  /** Asks for a name and a box and adds an empty lineup. */
  void addLineup();

  /** Asks how the lineup looked at is to be laid into its wells. */
  void arrangeLineup();

  /** Opens the wash strengths and the paper. */
  void editPaperAndWashes();
}
