package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class PrintingTest {
  @Test
  void aPrinterThatIsNotThereIsNamed() {
    byte[] pdf = PdfWriter.write(new Papers("t", List.of(new Sheet("t", 100, 100, List.of()))));

    assertThatThrownBy(() -> Printing.print(pdf, "the printer in the cellar", "t"))
        .isInstanceOfSatisfying(
            NoSuchPrinterException.class,
            e -> assertThat(e.printer()).isEqualTo("the printer in the cellar"));
  }

  @Test
  void printersAreListedWithoutADisplay() {
    assertThat(Printing.printers()).doesNotContain("the printer in the cellar");
  }
}
