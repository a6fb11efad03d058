package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearNamesTest {
  private static final List<String> KNOWN = List.of("Yellow ochre", "Viridian", "Sap green");

  @Test
  void aSlipOfThePenIsUnderstood() {
    assertThat(NearNames.of("yelow ochr", KNOWN, 3)).containsExactly("Yellow ochre");
    assertThat(NearNames.of("viridain", KNOWN, 3)).containsExactly("Viridian");
  }

  @Test
  void aPartOfANameIsEnough() {
    assertThat(NearNames.of("green", KNOWN, 3)).containsExactly("Sap green");
  }

  @Test
  void whatIsFarOffIsNotGuessed() {
    assertThat(NearNames.of("titanium", KNOWN, 3)).isEmpty();
    assertThat(NearNames.of(" ", KNOWN, 3)).isEmpty();
  }
}
