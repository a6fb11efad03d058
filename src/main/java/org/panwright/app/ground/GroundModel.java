package org.panwright.app.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import org.panwright.app.fx.TypedNumber;
import org.panwright.kit.Edit;
import org.panwright.kit.Kit;
import org.panwright.paint.Paper;
import org.panwright.paint.Wash;
import org.panwright.paint.WashStrengths;
import org.panwright.words.GroundWords;

/** Paper and wash strengths while they are being edited. */
final class GroundModel {
  private static final double MOST = 4;
  private static final int DECIMALS = 3;

  private final Kit kit;
  private final ObjectProperty<Paper> paper;
  private final List<StringProperty> loads = new ArrayList<>();
  private final ObservableValue<String> problem;

  GroundModel(Kit kit) {
    this.kit = kit;
    paper = new SimpleObjectProperty<>(kit.paper());
    for (Wash wash : Wash.values()) {
      loads.add(new SimpleStringProperty(TypedNumber.write(kit.washes().load(wash), DECIMALS)));
    }
    problem = Bindings.createStringBinding(this::problem, loads.toArray(Observable[]::new));
  }

  /** The papers to choose from: those of the program, and the kit's own if it is another. */
  List<Paper> papers() {
    List<Paper> papers = new ArrayList<>(Paper.PLAIN);
    if (!papers.contains(kit.paper())) {
      papers.add(kit.paper());
    }
    return papers;
  }

  ObjectProperty<Paper> paperProperty() {
    return paper;
  }

  /** The load of a wash as typed. */
  StringProperty loadProperty(Wash wash) {
    return loads.get(wash.ordinal());
  }

  /** What is not right with the loads; empty if nothing is. */
  ObservableValue<String> problemProperty() {
    return problem;
  }

  /** Puts the usual loads in. */
  void usual() {
    for (Wash wash : Wash.values()) {
      loadProperty(wash).set(TypedNumber.write(WashStrengths.USUAL.load(wash), DECIMALS));
    }
  }

  /** The edits that make the kit so; none if nothing was changed. */
  List<Edit> edits() {
    List<Edit> edits = new ArrayList<>();
    if (!paper.get().equals(kit.paper())) {
      edits.add(new Edit.SetPaper(paper.get()));
    }
    washes()
        .filter(typed -> !typed.equals(kit.washes()))
        .ifPresent(typed -> edits.add(new Edit.SetWashes(typed)));
    return edits;
  }

  private Optional<WashStrengths> washes() {
    if (!problem().isEmpty()) {
      return Optional.empty();
    }
    List<Double> typed = new ArrayList<>();
    for (Wash wash : Wash.values()) {
      typed.add(load(wash).getAsDouble());
    }
    return Optional.of(new WashStrengths(typed));
  }

  private String problem() {
    for (Wash wash : Wash.values()) {
      if (load(wash).isEmpty()) {
        return GroundWords.notANumber(wash);
      }
    }
    Wash[] washes = Wash.values();
    for (int i = 1; i < washes.length; i++) {
      if (load(washes[i]).getAsDouble() >= load(washes[i - 1]).getAsDouble()) {
        return GroundWords.notFalling(washes[i - 1], washes[i]);
      }
    }
    return "";
  }

  private OptionalDouble load(Wash wash) {
    OptionalDouble typed = TypedNumber.read(loadProperty(wash).get());
    return typed.isPresent() && typed.getAsDouble() > 0 && typed.getAsDouble() <= MOST
        ? typed
        : OptionalDouble.empty();
  }
}
