package org.panwright.app.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import org.junit.jupiter.api.Test;

class InPlaceTest {
  private final Set<String> touched = new HashSet<>();

  @Test
  void anyListBecomesTheWantedOne() {
    Random random = new Random(7);
    List<String> letters = List.of("abcdefgh".split(""));
    for (int trial = 0; trial < 500; trial++) {
      ObservableList<String> list = FXCollections.observableArrayList(some(letters, random));
      List<String> wanted = some(letters, random);
      InPlace.arrange(list, wanted);
      assertThat(list).isEqualTo(wanted);
    }
  }

  @Test
  void nothingIsTouchedWhereNothingChanges() {
    ObservableList<String> list = watched("a", "b", "c");
    InPlace.arrange(list, List.of("a", "b", "c"));
    assertThat(touched).isEmpty();
  }

  @Test
  void whatStaysIsNotTouchedWhenOthersComeAndGo() {
    ObservableList<String> list = watched("a", "b", "c", "d");
    InPlace.arrange(list, List.of("x", "b", "d", "y"));
    assertThat(touched).containsExactlyInAnyOrder("a", "c", "x", "y");
  }

  @Test
  void whatMovesUpIsAllThatIsTouched() {
    ObservableList<String> list = watched("a", "b", "c", "d");
    InPlace.arrange(list, List.of("d", "a", "b", "c"));
    assertThat(touched).containsExactly("d");
  }

  private ObservableList<String> watched(String... letters) {
    ObservableList<String> list = FXCollections.observableArrayList(letters);
    list.addListener(
        (ListChangeListener<String>)
            change -> {
              while (change.next()) {
                touched.addAll(change.getRemoved());
                touched.addAll(change.getAddedSubList());
              }
            });
    return list;
  }

  private static List<String> some(List<String> letters, Random random) {
    List<String> some = new ArrayList<>(letters);
    Collections.shuffle(some, random);
    return List.copyOf(some.subList(0, random.nextInt(letters.size() + 1)));
  }
}
