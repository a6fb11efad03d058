package org.panwright.app.swatches;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;

class LateWayTest {
  private static final WayWords WORDS = new WayWords("Loose", "purpose", "empty", "hint");

  private final List<String> done = new ArrayList<>();
  private final LateWay way =
      new LateWay(
          WORDS,
          () -> {
            done.add("built");
            return new Told();
          });

  @Test
  void isNotBuiltForItsWordsNorToBeLeft() {
    assertThat(way.words()).isEqualTo(WORDS);
    way.setChosen(false);
    assertThat(done).isEmpty();
  }

  @Test
  void isBuiltOnceWhenItIsChosen() {
    way.setChosen(true);
    way.setChosen(false);
    assertThat(done).containsExactly("built", "chosen true", "chosen false");
  }

  private final class Told implements ReadingWay {
    @Override
    public WayWords words() {
      return WORDS;
    }

    @Override
    public PictureMarks marks() {
      throw new AssertionError("not asked for here");
    }

    @Override
    public Region content() {
      throw new AssertionError("not asked for here");
    }

    @Override
    public Region foot() {
      throw new AssertionError("not asked for here");
    }

    @Override
    public void setChosen(boolean chosen) {
      done.add("chosen " + chosen);
    }
  }
}
