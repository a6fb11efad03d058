package org.panwright.swatch.spot;

import java.util.List;
import java.util.Optional;
import org.panwright.colour.Lab;
import org.panwright.swatch.picture.Homography;
import org.panwright.swatch.picture.Picture;
import org.panwright.swatch.picture.Point;
import org.panwright.swatch.picture.Zone;
import org.panwright.swatch.sheet.Card;
import org.panwright.swatch.sheet.PatchReading;
import org.panwright.swatch.sheet.ReadingFaultException;
import org.panwright.swatch.sheet.ReadingNote;
import org.panwright.swatch.sheet.Survey;

/**
 * What was read at the places the painter points at.
 *
 * <p>Spots of bare paper say what light and camera did, as on a printed sheet. A card beside them
 * says what colour the paper itself has; without bare paper the card alone takes its place.
 *
 * @param spots as pointed at
 * @param patches what each looks like, in the order of the spots; empty where a spot is too small
 *     or reaches out of the picture
 * @param paper the colour the bare paper is taken to have
 * @param measuredPaper whether a card told that colour
 * @param notes what makes the colours less sure
 */
public record SpotsReading(
    List<Spot> spots,
    List<Optional<PatchReading>> patches,
    Lab paper,
    boolean measuredPaper,
    List<ReadingNote> notes) {
  /** Spots have no known size on the paper, so the picture is never called coarse. */
  private static final double FINE_ENOUGH = 100;

  public SpotsReading {
    spots = List.copyOf(spots);
    patches = List.copyOf(patches);
    notes = List.copyOf(notes);
    if (spots.size() != patches.size()) {
      throw new IllegalArgumentException(
          "%d spots have %d readings".formatted(spots.size(), patches.size()));
    }
  }

  /** Whether there is something among spots by which light and camera can be taken out. */
  public static boolean canRead(List<Spot> spots) {
    return spots.stream().anyMatch(s -> s.kind() == SpotKind.PAPER || s.kind() == SpotKind.CARD);
  }

  /**
   * Reads spots.
   *
   * @param paperColour CIELAB under D65 of the paper painted on
   * @param cardReflectance what share of light the card turns back: 0.18 for a grey card, about 0.9
   *     for a white one; above 0 and below 1
   * @throws ReadingFaultException if there is no bare paper and no card to go by
   */
  public static SpotsReading of(
      Picture picture, List<Spot> spots, Lab paperColour, double cardReflectance)
      throws ReadingFaultException {
    List<Zone> bare = zones(spots, SpotKind.PAPER);
    List<Zone> cards = zones(spots, SpotKind.CARD);
    double lightness = Card.lightnessOf(cardReflectance);
    boolean cardForPaper = bare.isEmpty();
    Survey survey =
        Survey.of(
            picture,
            inPixels(),
            cardForPaper ? cards : bare,
            cardForPaper ? new Lab(lightness, 0, 0) : paperColour,
            cardForPaper
                ? Optional.empty()
                : cards.stream().findFirst().map(zone -> new Card(zone, lightness)),
            FINE_ENOUGH);
    return new SpotsReading(
        spots,
        spots.stream().map(spot -> survey.read(spot.zone())).toList(),
        cardForPaper ? paperColour : survey.paper(),
        !cardForPaper && !cards.isEmpty() && !survey.paper().equals(paperColour),
        survey.notes());
  }

  private static List<Zone> zones(List<Spot> spots, SpotKind kind) {
    return spots.stream().filter(spot -> spot.kind() == kind).map(Spot::zone).toList();
  }

  /** Spots are measured in pixels already. */
  private static Homography inPixels() {
    List<Point> square =
        List.of(new Point(0, 0), new Point(1, 0), new Point(1, 1), new Point(0, 1));
    return Homography.of(square, square).orElseThrow();
  }
}
