package org.panwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Properties;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DisplayTest {
  @ParameterizedTest(name = "{0} with DISPLAY <{1}>")
  @CsvSource({
    "Linux, '', false",
    "Linux, ':0', true",
    "FreeBSD, '', false",
    "Windows 11, '', true",
    "Mac OS X, '', true"
  })
  void onlyUnixNeedsTheVariable(String system, String display, boolean there) {
    Properties properties = new Properties();
    properties.setProperty("os.name", system);
    assertThat(Display.isThere(properties, Map.of("DISPLAY", display))).isEqualTo(there);
  }
}
