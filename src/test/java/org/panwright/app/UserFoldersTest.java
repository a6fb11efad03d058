package org.panwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Defaults as in the XDG Base Directory Specification 0.8. */
class UserFoldersTest {
  private static final Path HOME = Path.of("/home/ada");

  @Test
  void unixFollowsTheXdgDefaults() {
    UserFolders folders = UserFolders.of("Linux", Map.of(), HOME);
    assertThat(folders.settings()).isEqualTo(Path.of("/home/ada/.config/panwright"));
    assertThat(folders.logs()).isEqualTo(Path.of("/home/ada/.local/state/panwright"));
    assertThat(folders.cache()).isEqualTo(Path.of("/home/ada/.cache/panwright"));
  }

  @Test
  void unixFollowsTheXdgVariables() {
    UserFolders folders =
        UserFolders.of("Linux", Map.of("XDG_CONFIG_HOME", "/c", "XDG_STATE_HOME", "/s"), HOME);
    assertThat(folders.settings()).isEqualTo(Path.of("/c/panwright"));
    assertThat(folders.logs()).isEqualTo(Path.of("/s/panwright"));
  }

  @Test
  void aRelativeVariableCountsAsUnset() {
    UserFolders folders = UserFolders.of("Linux", Map.of("XDG_CONFIG_HOME", "c"), HOME);
    assertThat(folders.settings()).isEqualTo(Path.of("/home/ada/.config/panwright"));
  }

  @Test
  void macKeepsThemInTheLibrary() {
    UserFolders folders = UserFolders.of("Mac OS X", Map.of(), HOME);
    assertThat(folders.settings())
        .isEqualTo(Path.of("/home/ada/Library/Application Support/Panwright"));
  }

  @Test
  void windowsKeepsThemInAppData() {
    UserFolders folders = UserFolders.of("Windows 11", Map.of("APPDATA", "/roaming"), HOME);
    assertThat(folders.settings()).isEqualTo(Path.of("/roaming/Panwright"));
    assertThat(folders.cache()).isEqualTo(HOME.resolve("AppData/Local/Panwright/cache"));
  }
}
