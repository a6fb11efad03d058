package org.panwright.app.ring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import org.panwright.analysis.finding.HueGap;
import org.panwright.analysis.judge.Judgement;
import org.panwright.analysis.reach.Ring;
import org.panwright.app.Session;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.Oklab;
import org.panwright.colour.Oklch;
import org.panwright.mixing.MixGrid;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Paint;
import org.panwright.paint.Wash;
import org.panwright.words.RingWords;

/** What the hue ring shows: the lineup's, the shelf's, perhaps that of an edit being tried. */
public final class RingModel {
  private final ObjectProperty<Ring.Part> part = new SimpleObjectProperty<>(Ring.Part.ALL);
  private final ObservableValue<Optional<RingPicture>> picture;
  private final RingCursor cursor;

  public RingModel(Session session) {
    ObservableValue<Optional<Judgement>> standing = session.judgementProperty();
    ObservableValue<Optional<Judgement>> trial = session.previewProperty();
    picture =
        javafx.beans.binding.Bindings.createObjectBinding(
            () -> picture(standing.getValue(), trial.getValue(), part.get()),
            standing,
            trial,
            part);
    cursor = new RingCursor(session.selectionProperty()::set);
  }

  /** The place gone to by mouse or keys; what is picked there is a colour to be met. */
  RingCursor cursor() {
    return cursor;
  }

  /** How far lineup and shelf get in the hue gone to, in words; else what the ring shows. */
  String summary() {
    Optional<RingPicture> shown = picture.getValue();
    return shown
        .flatMap(p -> cursor.placeProperty().get().map(at -> reached(p, at)))
        .or(() -> shown.map(p -> RingWords.summary(p.paints().size(), p.gaps().size())))
        .orElse(RingWords.TITLE);
  }

  private static String reached(RingPicture shown, RingCursor.Place at) {
    int step = Ring.step(at.hueDeg());
    return RingWords.reached(
        at.hueDeg(),
        at.chroma(),
        shown.lineup().chroma(shown.part(), step),
        shown.shelf().chroma(shown.part(), step));
  }

  /** All lightnesses, or light, middle or dark mixes only. */
  public ObjectProperty<Ring.Part> partProperty() {
    return part;
  }

  ObservableValue<Optional<RingPicture>> pictureProperty() {
    return picture;
  }

  private static Optional<RingPicture> picture(
      Optional<Judgement> standing, Optional<Judgement> trial, Ring.Part part) {
    return standing.map(
        judgement ->
            new RingPicture(
                judgement.ring(),
                judgement.shelfRing(),
                trial.map(Judgement::ring),
                part,
                gaps(trial.orElse(judgement)),
                paints(trial.orElse(judgement)),
                List.of(),
                List.of()));
  }

  private static List<HueGap> gaps(Judgement judgement) {
    return judgement.findings().stream()
        .filter(HueGap.class::isInstance)
        .map(HueGap.class::cast)
        .toList();
  }

  private static List<RingPicture.Dot> paints(Judgement judgement) {
    List<RingPicture.Dot> dots = new ArrayList<>();
    MixGrid grid = judgement.grid();
    for (int row = 0; row < grid.size(); row++) {
      String id = judgement.table().ids().get(grid.paint(row));
      Paint paint = judgement.kit().shelf().find(id).orElseThrow();
      Lab purest = purest(grid, row);
      Oklch place = Oklab.ofD65(purest.toXyz(Light.D65.white())).toOklch();
      dots.add(new RingPicture.Dot(paint.name(), paint.codes(), place, purest));
    }
    return dots;
  }

  /** The wash of a paint with the most chroma. */
  private static Lab purest(MixGrid grid, int row) {
    Lab purest = grid.lab(row, row, Ratio.EVEN, Wash.BUTTER);
    for (Wash wash : Wash.values()) {
      Lab lab = grid.lab(row, row, Ratio.EVEN, wash);
      if (lab.chroma() > purest.chroma()) {
        purest = lab;
      }
    }
    return purest;
  }
}
