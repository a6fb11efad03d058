package org.panwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ArgumentsTest {
  private static Arguments read(String... words) throws BadUseException {
    return Arguments.of("mix", List.of(words), Set.of("json"), Set.of("out"));
  }

  @Test
  void wordsSwitchesAndOptionsMayComeInAnyOrder() throws BadUseException {
    Arguments arguments = read("--out", "folder", "a", "--json", "b");

    assertThat(arguments.plain()).containsExactly("a", "b");
    assertThat(arguments.has("json")).isTrue();
    assertThat(arguments.required("out")).isEqualTo("folder");
  }

  @Test
  void valuesMayBeAttached() throws BadUseException {
    assertThat(read("--out=a=b").value("out")).contains("a=b");
    assertThat(read("--out=").value("out")).contains("");
  }

  @Test
  void valuesMayLookLikeOptions() throws BadUseException {
    assertThat(read("--out", "--json").value("out")).contains("--json");
  }

  @Test
  void afterTwoDashesAllWordsArePlain() throws BadUseException {
    assertThat(read("--", "--json", "--").plain()).containsExactly("--json", "--");
  }

  @Test
  void absentOptionsAreEmpty() throws BadUseException {
    Arguments arguments = read();

    assertThat(arguments.value("out")).isEmpty();
    assertThat(arguments.has("json")).isFalse();
    assertThatThrownBy(() -> arguments.required("out")).isInstanceOf(BadUseException.class);
  }

  @Test
  void namesNoFileCanHaveAreRefused() {
    assertThatThrownBy(() -> Arguments.path("a\0b"))
        .isInstanceOf(BadUseException.class)
        .hasMessageContaining("cannot be the name of a file");
  }
}
