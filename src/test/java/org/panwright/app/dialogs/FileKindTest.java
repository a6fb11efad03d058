package org.panwright.app.dialogs;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FileKindTest {
  private static final FileKind KIT = new FileKind("Save", "kits", ".kit.json");

  /** The name typed over the offered “New kit.kit.json” keeps the “.json” a chooser leaves. */
  @ParameterizedTest
  @CsvSource({
    "harbour, harbour.kit.json",
    "harbour.json, harbour.kit.json",
    "harbour.kit.json, harbour.kit.json",
    "harbour.kit.json.json, harbour.kit.json",
    "Harbour.KIT.JSON, Harbour.kit.json",
    "no. 12, no. 12.kit.json",
    "tool.kit, tool.kit.kit.json"
  })
  void aKitEndsOnItsEndingOnce(String typed, String whole) {
    assertThat(KIT.complete(typed)).isEqualTo(whole);
  }

  @Test
  void anEndingAloneIsANameToo() {
    assertThat(new FileKind("Save", "papers", ".pdf").complete(".pdf")).isEqualTo(".pdf.pdf");
  }
}
