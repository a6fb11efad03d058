package org.panwright.app.theme;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.paint.Color;

/** The colours of the roles as they stand in a theme's style sheet. */
final class RoleColours {
  private RoleColours() {}

  static Color of(Theme theme, String role) throws IOException {
    try (InputStream in = URI.create(theme.rolesSheet()).toURL().openStream()) {
      String sheet = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      Matcher found = Pattern.compile("-pw-" + role + ": (#[0-9a-f]{6});").matcher(sheet);
      assertThat(found.find()).as("role " + role).isTrue();
      return Color.web(found.group(1));
    }
  }
}
