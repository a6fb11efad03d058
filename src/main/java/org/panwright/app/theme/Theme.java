package org.panwright.app.theme;

import java.util.List;
import java.util.Objects;

/** One of the two looks of the window. */
public enum Theme {
  LIGHT("light.css"),
  DARK("dark.css");

  private final String roles;

  Theme(String roles) {
    this.roles = roles;
  }

  /**
   * Its style sheets in the order a scene takes them: colour roles, shapes, then what single views
   * need.
   */
  public List<String> sheets() {
    return List.of(
        address(roles),
        address("base.css"),
        address("judging.css"),
        address("choosing.css"),
        address("fill.css"),
        address("outing.css"),
        address("page.css"),
        address("papers.css"),
        address("swatches.css"));
  }

  private static String address(String name) {
    String path = "/org/panwright/app/theme/" + name;
    return Objects.requireNonNull(Theme.class.getResource(path), path).toExternalForm();
  }
}
