package org.panwright.app.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.panwright.analysis.judge.Judgement;
import org.panwright.analysis.subject.Match;
import org.panwright.analysis.subject.RecipeBook;
import org.panwright.app.Session;
import org.panwright.app.fx.Latest;
import org.panwright.kit.Kit;
import org.panwright.kit.SubjectColour;
import org.panwright.mixing.Mixer;
import org.panwright.paint.Ownership;
import org.panwright.paint.Paint;

/** The nearest mixes for the subject colours shown, from the box and from the shelf. */
final class SubjectRecipes {
  private final Session session;
  private final SubjectModel subject;
  private final Consumer<RuntimeException> failures;
  private final RecipeBook book = new RecipeBook();
  private final Latest<Shown> finding;
  private final ReadOnlyObjectWrapper<Shown> shown =
      new ReadOnlyObjectWrapper<>(new Shown(Kit.empty("none"), List.of()));
  private boolean settled = true;

  /** The rows and the kit their paints are from. */
  record Shown(Kit kit, List<SubjectRow> rows) {
    Shown {
      rows = List.copyOf(rows);
    }
  }

  SubjectRecipes(
      Session session,
      SubjectModel subject,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.subject = subject;
    this.failures = failures;
    finding = new Latest<>(away, home);
    subject.outingProperty().addListener(o -> refresh());
    session.judgementProperty().addListener(o -> refresh());
    refresh();
  }

  ReadOnlyObjectProperty<Shown> shownProperty() {
    return shown.getReadOnlyProperty();
  }

  /** Whether the rows are those of the kit as it is now. */
  boolean isSettled() {
    return settled;
  }

  private void refresh() {
    List<SubjectColour> colours = subject.colours();
    Optional<Judgement> judgement = session.judgementProperty().get();
    if (colours.isEmpty() || judgement.isEmpty()) {
      finding.cancel();
      settled = true;
      List<SubjectRow> bare =
          colours.stream().map(c -> new SubjectRow(c, Optional.empty(), Optional.empty())).toList();
      shown.set(new Shown(session.kit(), bare));
      return;
    }
    settled = false;
    finding.request(
        outdated -> new Shown(judgement.get().kit(), rows(judgement.get(), colours, outdated)),
        found -> {
          settled = true;
          shown.set(found);
        },
        failures);
  }

  private List<SubjectRow> rows(
      Judgement judgement, List<SubjectColour> colours, BooleanSupplier outdated) {
    List<String> box = judgement.earnings().stream().map(e -> e.paintId()).toList();
    List<String> shelf =
        judgement.kit().shelf().paints().stream()
            .filter(paint -> paint.ownership() == Ownership.OWNED || box.contains(paint.id()))
            .map(Paint::id)
            .toList();
    Mixer mixer = new Mixer(judgement.table());
    List<SubjectRow> rows = new ArrayList<>();
    for (SubjectColour colour : colours) {
      Optional<Match> fromBox = best(judgement, box, colour, outdated);
      Optional<Match> fromShelf =
          best(judgement, shelf, colour, outdated)
              .filter(m -> fromBox.isEmpty() || m.deltaE() < fromBox.get().deltaE());
      rows.add(
          new SubjectRow(
              colour,
              fromBox.map(match -> new SubjectRow.Near(match, mixer.trust(match.recipe()))),
              fromShelf.map(match -> new SubjectRow.Near(match, mixer.trust(match.recipe())))));
    }
    return rows;
  }

  private Optional<Match> best(
      Judgement judgement, List<String> paints, SubjectColour colour, BooleanSupplier outdated) {
    return book
        .nearest(judgement.table(), paints, judgement.kit().washes(), colour.lab(), 1, outdated)
        .stream()
        .findFirst();
  }
}
