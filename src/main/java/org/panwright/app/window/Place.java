package org.panwright.app.window;

import java.util.function.Supplier;
import javafx.scene.Parent;

/**
 * One of the views the window can show. Its keyboard shortcut is Ctrl with its number from 1.
 *
 * @param name on its button, one or two words
 * @param build makes the view when it is first looked at
 */
public record Place(String name, Supplier<? extends Parent> build) {}
