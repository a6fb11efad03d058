package org.panwright.app.window;

import java.util.List;
import javafx.scene.control.Menu;
import org.panwright.app.fx.Action;

/**
 * What the menus hold beside undo, redo and the views.
 *
 * @param kit the menu of files
 * @param things the menus of shelf, box and lineup
 * @param view groups for the menu of views
 * @param help the menu of explanations
 */
public record MenuPlan(Menu kit, List<Menu> things, List<List<Action>> view, Menu help) {}
