package org.panwright.app.theme;

import java.util.List;
import java.util.Objects;
import javafx.css.PseudoClass;
import javafx.scene.Node;

/**
 * One of the two looks of the window.
 *
 * <p>Every scene takes the style sheets of both; a state of its root says whose colours count. Then
 * a change of theme sets colours anew and leaves alone which rule is for which node, which would
 * take the toolkit six times as long.
 */
public enum Theme {
  LIGHT("light.css"),
  DARK("dark.css");

  private static final PseudoClass IS_DARK = PseudoClass.getPseudoClass("dark");

  private final String roles;

  Theme(String roles) {
    this.roles = roles;
  }

  /**
   * The style sheets of a scene in the order it takes them: colour roles, shapes, then what single
   * views need. They are the same for both themes; see {@link #putOn}.
   */
  public List<String> sheets() {
    return List.of(
        LIGHT.rolesSheet(),
        DARK.rolesSheet(),
        address("base.css"),
        address("judging.css"),
        address("choosing.css"),
        address("fill.css"),
        address("outing.css"),
        address("page.css"),
        address("papers.css"),
        address("swatches.css"));
  }

  /** Puts the theme on the root of a scene that has the sheets. */
  public void putOn(Node root) {
    root.pseudoClassStateChanged(IS_DARK, this == DARK);
  }

  /** The style sheet of the colour roles. */
  String rolesSheet() {
    return address(roles);
  }

  private static String address(String name) {
    String path = "/org/panwright/app/theme/" + name;
    return Objects.requireNonNull(Theme.class.getResource(path), path).toExternalForm();
  }
}
