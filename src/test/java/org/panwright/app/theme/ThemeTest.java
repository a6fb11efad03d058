package org.panwright.app.theme;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import javafx.css.CssParser;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ThemeTest {
  /** WCAG 2.1, success criterion 1.4.3: text of normal size. */
  private static final double AA_TEXT = 4.5;

  /** WCAG 2.1, success criterion 1.4.11: borders and marks one has to see. */
  private static final double AA_SHAPE = 3;

  @ParameterizedTest
  @EnumSource(Theme.class)
  void everySheetIsFreeOfErrors(Theme theme) throws IOException {
    for (String sheet : theme.sheets()) {
      int before = CssParser.errorsProperty().size();
      new CssParser().parse(URI.create(sheet).toURL());
      assertThat(CssParser.errorsProperty().subList(before, CssParser.errorsProperty().size()))
          .as(sheet)
          .isEmpty();
    }
  }

  @ParameterizedTest(name = "{0}: {1} on {2}")
  @CsvSource({
    "LIGHT, text, surface",
    "LIGHT, text, surface-raised",
    "LIGHT, text, surface-sunken",
    "LIGHT, text, selected",
    "LIGHT, text, hover",
    "LIGHT, text, swatch-surround",
    "LIGHT, text-soft, surface",
    "LIGHT, text-soft, surface-raised",
    "LIGHT, warn, surface",
    "LIGHT, warn, surface-raised",
    "LIGHT, text, warn-surface",
    "LIGHT, text-on-accent, accent",
    "LIGHT, text-on-accent, accent-hover",
    "DARK, text, surface",
    "DARK, text, surface-raised",
    "DARK, text, surface-sunken",
    "DARK, text, selected",
    "DARK, text, hover",
    "DARK, text, swatch-surround",
    "DARK, text-soft, surface",
    "DARK, text-soft, surface-raised",
    "DARK, warn, surface",
    "DARK, warn, surface-raised",
    "DARK, text, warn-surface",
    "DARK, text-on-accent, accent",
    "DARK, text-on-accent, accent-hover"
  })
  void textCanBeReadOnItsGround(Theme theme, String text, String ground) throws IOException {
    assertThat(contrast(RoleColours.of(theme, text), RoleColours.of(theme, ground)))
        .isGreaterThanOrEqualTo(AA_TEXT);
  }

  @ParameterizedTest(name = "{0}: {1} on {2}")
  @CsvSource({
    "LIGHT, focus, surface",
    "LIGHT, focus, surface-raised",
    "LIGHT, focus, selected",
    "LIGHT, focus, swatch-surround",
    "LIGHT, line-strong, surface-raised",
    "DARK, focus, surface",
    "DARK, focus, surface-raised",
    "DARK, focus, selected",
    "DARK, focus, swatch-surround",
    "DARK, line-strong, surface-raised"
  })
  void whatMarksAFieldCanBeSeen(Theme theme, String mark, String ground) throws IOException {
    assertThat(contrast(RoleColours.of(theme, mark), RoleColours.of(theme, ground)))
        .isGreaterThanOrEqualTo(AA_SHAPE);
  }

  @ParameterizedTest
  @EnumSource(Theme.class)
  void theGroundRoundSwatchesHasNoHue(Theme theme) throws IOException {
    assertThat(RoleColours.of(theme, "swatch-surround").getSaturation()).isZero();
    assertThat(RoleColours.of(theme, "surface").getSaturation()).isZero();
  }

  @Test
  void blackOnWhiteHasTheContrastOfTheStandard() {
    assertThat(contrast(Color.BLACK, Color.WHITE)).isEqualTo(21);
  }

  /** WCAG 2.1, contrast ratio: (L1 + 0.05) / (L2 + 0.05), the lighter first. */
  private static double contrast(Color a, Color b) {
    double first = luminance(a) + 0.05;
    double second = luminance(b) + 0.05;
    return Math.max(first, second) / Math.min(first, second);
  }

  /** WCAG 2.1, relative luminance. */
  private static double luminance(Color color) {
    return 0.2126 * linear(color.getRed())
        + 0.7152 * linear(color.getGreen())
        + 0.0722 * linear(color.getBlue());
  }

  private static double linear(double encoded) {
    return encoded <= 0.03928 ? encoded / 12.92 : Math.pow((encoded + 0.055) / 1.055, 2.4);
  }
}
