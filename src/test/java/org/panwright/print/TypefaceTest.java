package org.panwright.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.junit.jupiter.api.Test;

class TypefaceTest {
  /**
   * Liberation Sans is made to have the widths of Helvetica; these are Adobe's published Core 14
   * font metrics, in thousandths of an em.
   */
  @Test
  void widthsAreThoseOfAdobesHelvetica() throws IOException {
    for (String text : new String[] {"Ultramarine blue", "PB15:3 + PV19", "half", "0123456789"}) {
      double regular = new PDType1Font(FontName.HELVETICA).getStringWidth(text) / 1000;
      double bold = new PDType1Font(FontName.HELVETICA_BOLD).getStringWidth(text) / 1000;

      assertThat(Typeface.REGULAR.widthMm(text, 72) / 25.4).isEqualTo(regular, offset(0.01));
      assertThat(Typeface.BOLD.widthMm(text, 72) / 25.4).isEqualTo(bold, offset(0.01));
    }
  }

  @Test
  void bothFacesHaveAccentsGreekAndThePlaceholder() {
    for (Typeface face : Typeface.values()) {
      assertThat("éàüßñçøłőšŷ αβγδωΑΏ ΔE □ ▼ …".codePoints()).allMatch(face::has);
    }
  }

  @Test
  void aCharacterWithoutGlyphIsRefused() {
    assertThatThrownBy(() -> Typeface.REGULAR.widthMm("群", 10))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the face has no glyph for U+7FA4");
  }
}
