package org.panwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ServiceLoader;
import org.junit.jupiter.api.Test;

class ToolkitNotesTest {
  @Test
  void thePlatformFindsThem() {
    assertThat(ServiceLoader.load(System.LoggerFinder.class))
        .hasAtLeastOneElementOfType(ToolkitNotes.class);
  }

  @Test
  void onlyErrorsAreToldOf() {
    System.Logger notes = new ToolkitNotes().getLogger("javafx", getClass().getModule());
    assertThat(notes.getName()).isEqualTo("javafx");
    assertThat(notes.isLoggable(System.Logger.Level.ERROR)).isTrue();
    assertThat(notes.isLoggable(System.Logger.Level.WARNING)).isFalse();
    assertThat(notes.isLoggable(System.Logger.Level.OFF)).isFalse();
  }
}
