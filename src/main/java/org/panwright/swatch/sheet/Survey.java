package org.panwright.swatch.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.panwright.colour.Lab;
import org.panwright.colour.Light;
import org.panwright.colour.LinearSrgb;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.Zone;

/**
 * A flat piece of paper in a picture, whose bare spots tell what light and camera did to it.
 *
 * <p>The common ground of printed sheets, hand-painted grids and single spots: each asks for places
 * in its own unit and gets colours as on the paper.
 */
public final class Survey {
  private static final double LEAST_USED = 0.4;
  private static final double MOST_SPREAD = 0.25;
  private static final double DARKEST_PAPER = 0.02;
  private static final double MOST_CHROMA = 80;

  private final SpotReader reader;
  private final PaperCorrection correction;
  private final Lab paper;
  private final List<ReadingNote> notes;

  private Survey(
      SpotReader reader, PaperCorrection correction, Lab paper, List<ReadingNote> notes) {
    this.reader = reader;
    this.correction = correction;
    this.paper = paper;
    this.notes = List.copyOf(notes);
  }

  /**
   * Looks at the bare paper.
   *
   * @param place from the sheet's unit to pixels
   * @param bare where the paper is bare, in the sheet's unit
   * @param paperColour CIELAB under D65 of that paper
   * @param card a neutral card, if one lies there; then {@code paperColour} is not used
   * @param pixelsPerMm how fine the picture is
   * @throws ReadingFaultException if no bare paper can be made out
   */
  public static Survey of(
      Picture picture,
      Homography place,
      List<Zone> bare,
      Lab paperColour,
      Optional<Card> card,
      double pixelsPerMm)
      throws ReadingFaultException {
    SpotReader reader = new SpotReader(picture, place);
    List<SpotColour> spots = new ArrayList<>();
    for (Zone zone : bare) {
      reader.read(zone).ifPresent(spots::add);
    }
    PaperField field =
        PaperField.through(spots)
            .orElseThrow(() -> new ReadingFaultException(new ReadingFault.NoBarePaper()));
    double brightest =
        spots.stream().mapToDouble(s -> field.at(s.middle()).toXyzD65().y()).max().orElseThrow();
    if (field.used() < LEAST_USED || field.spread() > MOST_SPREAD || brightest < DARKEST_PAPER) {
      throw new ReadingFaultException(new ReadingFault.NoBarePaper());
    }
    double chroma = SurveyNotes.chroma(spots, field);
    if (chroma > MOST_CHROMA) {
      throw new ReadingFaultException(new ReadingFault.PaperTooColoured(chroma));
    }
    Optional<Lab> byCard = card.flatMap(c -> paperByCard(reader, field, c));
    Lab paper = byCard.orElse(paperColour);
    List<ReadingNote> notes = new ArrayList<>(SurveyNotes.of(picture, spots, field, pixelsPerMm));
    if (card.isPresent() && byCard.isEmpty()) {
      notes.add(new ReadingNote.CardUnused());
    }
    return new Survey(reader, new PaperCorrection(field, paper), paper, notes);
  }

  /** The card's colour is known, so it says what white would have looked like in its place. */
  private static Optional<Lab> paperByCard(SpotReader reader, PaperField field, Card card) {
    return reader
        .read(card.zone())
        .filter(spot -> leastChannel(spot.colour()) > 0)
        .map(
            spot -> {
              LinearSrgb bare = field.at(spot.middle());
              double neutral = new Lab(card.lightness(), 0, 0).toXyz(Light.D65.white()).y();
              LinearSrgb seen = spot.colour();
              LinearSrgb paper =
                  new LinearSrgb(
                      bare.red() / seen.red() * neutral,
                      bare.green() / seen.green() * neutral,
                      bare.blue() / seen.blue() * neutral);
              return paper.toXyzD65().toLab(Light.D65.white());
            })
        .filter(lab -> lab.l() > 40 && lab.l() < 100);
  }

  private static double leastChannel(LinearSrgb colour) {
    return Math.min(colour.red(), Math.min(colour.green(), colour.blue()));
  }

  /** The corrected colour of a place; empty if it is outside the picture or too small. */
  public Optional<PatchReading> read(Zone zone) {
    return reader.read(zone).map(correction::reading);
  }

  /** The colour the paper itself is taken to have. */
  public Lab paper() {
    return paper;
  }

  /** What is to be said about the picture. */
  public List<ReadingNote> notes() {
    return notes;
  }
}
