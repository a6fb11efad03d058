package org.panwright.app.subject;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import org.panwright.app.Selection;
import org.panwright.app.Session;
import org.panwright.app.fx.FreshId;
import org.panwright.app.recipes.Wanted;
import org.panwright.colour.Clusters;
import org.panwright.colour.ColourText;
import org.panwright.colour.Lab;
import org.panwright.kit.Edit;
import org.panwright.kit.Outing;
import org.panwright.kit.SubjectColour;
import org.panwright.words.RecipeViewWords;
import org.panwright.words.SubjectWords;

/**
 * The colours of the place of an outing, and the photo they are taken from. Knows no control.
 *
 * <p>The colours are always those of the kit: every change is an edit. The photo is not kept.
 */
public final class SubjectModel {
  /** The fewest and the most colours taken from a photo at once. */
  static final int FEWEST = 2;

  static final int MOST = 12;

  private static final int PICK_REACH = 2;

  private final Session session;
  private final PhotoBench bench;
  private final ReadOnlyObjectWrapper<Optional<Outing>> outing =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ObjectProperty<Integer> wanted = new SimpleObjectProperty<>(6);

  SubjectModel(Session session, PhotoBench bench) {
    this.session = session;
    this.bench = bench;
    session.historyProperty().addListener(o -> refresh());
    session.lineupProperty().addListener(o -> refresh());
    refresh();
  }

  /** The photo and what is worked out about it. */
  PhotoBench bench() {
    return bench;
  }

  /** The outing whose colours are shown; empty while the kit has none. */
  ReadOnlyObjectProperty<Optional<Outing>> outingProperty() {
    return outing.getReadOnlyProperty();
  }

  /** All outings of the kit. */
  List<Outing> outings() {
    return session.kit().outings();
  }

  /** How many colours are taken from a photo. */
  ObjectProperty<Integer> wantedProperty() {
    return wanted;
  }

  /** The colours shown. */
  List<SubjectColour> colours() {
    return outing.get().map(Outing::subjects).orElse(List.of());
  }

  /** Shows the colours of another outing. */
  void choose(String outingId) {
    outing.set(session.kit().outing(outingId).or(outing::get));
  }

  /** Reads a photo and shows it; if no colour is there yet, its colours are taken at once. */
  void open(Path file) {
    bench.open(
        file,
        () -> {
          if (colours().isEmpty()) {
            takeColours();
          }
        });
  }

  /** Takes the colours that stand for the photo in place of those taken from a photo before. */
  void takeColours() {
    bench
        .photo()
        .ifPresent(
            photo -> bench.cluster(photo, wanted.get(), found -> replaceTaken(photo, found)));
  }

  private void replaceTaken(Photo photo, List<Clusters.Cluster> found) {
    List<SubjectColour> colours = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (SubjectColour colour : colours()) {
      if (colour.share() == 0) {
        colours.add(colour);
        names.add(colour.name());
      }
    }
    int at = 0;
    for (Clusters.Cluster cluster : found) {
      Lab lab = Photo.lab(cluster.centre());
      String name = fresh(SubjectWords.name(lab), names);
      colours.add(at++, new SubjectColour(name, lab, cluster.share(), photo.name()));
    }
    set(colours, photo.name());
  }

  /** Picks the colour at a place of the photo, to be mixed or kept. */
  void pick(int x, int y) {
    bench
        .photo()
        .ifPresent(
            photo -> {
              Lab lab = photo.around(x, y, PICK_REACH);
              session
                  .selectionProperty()
                  .set(Wanted.colour(lab, SubjectWords.pickedIn(photo.name())));
            });
  }

  /** How a place of the photo looks, in words. */
  String look(int x, int y) {
    return bench
        .photo()
        .map(photo -> RecipeViewWords.figures(photo.around(x, y, PICK_REACH)))
        .orElse(SubjectWords.NO_PHOTO);
  }

  /** Picks a subject colour, to see other ways to mix it. */
  void pick(SubjectColour colour) {
    session.selectionProperty().set(Wanted.colour(colour.lab(), colour.name()));
  }

  /** The colour that is picked, if one is. */
  ObservableValue<Optional<Lab>> pickedProperty() {
    return session
        .selectionProperty()
        .map(s -> s instanceof Selection.OfColour c ? Optional.of(c.lab()) : Optional.empty());
  }

  /** Keeps the picked colour as one more subject colour. */
  void keepPicked() {
    pickedProperty().getValue().ifPresent(this::add);
  }

  /** Puts the picked colour in place of a subject colour, which keeps its name. */
  void replaceByPicked(SubjectColour replaced) {
    pickedProperty()
        .getValue()
        .ifPresent(
            lab ->
                change(
                    replaced,
                    old -> new SubjectColour(old.name(), lab, 0, bench.photoName().orElse(""))));
  }

  /** Adds a colour typed in; whether the text was one. */
  boolean type(String text) {
    Optional<Lab> lab = ColourText.parse(text);
    lab.ifPresent(this::add);
    return lab.isPresent();
  }

  /** Gives a colour another name; a blank one changes nothing. */
  void rename(SubjectColour renamed, String name) {
    String stripped = name.strip();
    if (!stripped.isEmpty() && !stripped.equals(renamed.name())) {
      change(renamed, old -> old.withName(stripped));
    }
  }

  /** Takes a colour away. */
  void remove(SubjectColour removed) {
    List<SubjectColour> colours = new ArrayList<>(colours());
    if (colours.remove(removed)) {
      set(colours, "");
    }
  }

  private void add(Lab lab) {
    List<SubjectColour> colours = new ArrayList<>(colours());
    Set<String> names =
        colours.stream().map(SubjectColour::name).collect(Collectors.toCollection(HashSet::new));
    colours.add(new SubjectColour(fresh(SubjectWords.name(lab), names), lab));
    set(colours, bench.photoName().orElse(""));
  }

  /** Changes a colour, if it is still there: a field may speak up after its colour has gone. */
  private void change(SubjectColour changed, UnaryOperator<SubjectColour> how) {
    List<SubjectColour> colours = new ArrayList<>(colours());
    int place = colours.indexOf(changed);
    if (place >= 0) {
      colours.set(place, how.apply(changed));
      set(colours, "");
    }
  }

  /** Gives the outing these colours; makes an outing for them if the kit has none. */
  private void set(List<SubjectColour> colours, String photo) {
    if (outing.get().isPresent()) {
      session.perform(new Edit.SetSubjects(outing.get().get().id(), colours));
      return;
    }
    Set<String> taken =
        session.kit().outings().stream().map(Outing::id).collect(Collectors.toSet());
    Outing added =
        new Outing(
            FreshId.of("outing", taken),
            SubjectWords.outing(photo),
            Optional.empty(),
            "",
            session.lineup().map(lineup -> lineup.id()),
            0,
            0,
            colours);
    session.perform(new Edit.AddOuting(added));
  }

  private static String fresh(String name, Set<String> names) {
    String fresh = name;
    for (int number = 2; !names.add(fresh); number++) {
      fresh = name + " " + number;
    }
    return fresh;
  }

  /** Stays with the outing shown; else that of the lineup looked at, else the first. */
  private void refresh() {
    Optional<String> shown = outing.get().map(Outing::id);
    Optional<String> lineupId = session.lineup().map(lineup -> lineup.id());
    List<Outing> all = outings();
    Optional<Outing> now =
        all.stream()
            .filter(o -> shown.equals(Optional.of(o.id())))
            .findFirst()
            .or(
                () ->
                    all.stream()
                        .filter(o -> lineupId.isPresent() && o.lineupId().equals(lineupId))
                        .findFirst())
            .or(() -> all.stream().findFirst());
    if (!Objects.equals(now, outing.get())) {
      outing.set(now);
    }
  }
}
