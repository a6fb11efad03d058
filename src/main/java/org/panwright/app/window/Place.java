package org.panwright.app.window;

import java.util.function.Supplier;
import javafx.scene.Parent;

/**
 * One of the views the window can show.
 *
 * @param name as on its button
 * @param key the keys that show it, written as {@code Shortcut+1}
 * @param build makes the view when it is shown for the first time
 */
public record Place(String name, String key, Supplier<Parent> build) {}
