package org.panwright.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.geometry.Rectangle2D;
import org.junit.jupiter.api.Test;

class ScreenPlaceTest {
  private static final Rectangle2D MAIN = new Rectangle2D(0, 0, 1920, 1080);
  private static final Rectangle2D RIGHT = new Rectangle2D(1920, 0, 1280, 1024);

  @Test
  void aPlaceOnAScreenStays() {
    ScreenPlace place = new ScreenPlace(2000, 50, 1100, 700, false);
    assertThat(place.onto(List.of(MAIN, RIGHT))).isEqualTo(place);
  }

  @Test
  void aPlaceOnAScreenThatIsGoneComesToTheMainOne() {
    ScreenPlace place = new ScreenPlace(2000, 50, 1100, 700, false);
    assertThat(place.onto(List.of(MAIN))).isEqualTo(new ScreenPlace(820, 50, 1100, 700, false));
  }

  @Test
  void aWindowLargerThanTheScreenShrinks() {
    ScreenPlace place = new ScreenPlace(-50, -20, 2500, 1500, true);
    assertThat(place.onto(List.of(MAIN))).isEqualTo(new ScreenPlace(0, 0, 1920, 1080, true));
  }

  @Test
  void aSliverOnAScreenIsNotEnough() {
    ScreenPlace place = new ScreenPlace(1900, 0, 1100, 700, false);
    assertThat(place.onto(List.of(MAIN)).x()).isEqualTo(820);
  }
}
