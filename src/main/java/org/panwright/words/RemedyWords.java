package org.panwright.words;

import java.util.Optional;
import org.panwright.analysis.finding.DriesGrey;
import org.panwright.analysis.finding.Metals;
import org.panwright.analysis.finding.MuddyPairs;
import org.panwright.analysis.finding.Nature;
import org.panwright.analysis.finding.Remedy;
import org.panwright.analysis.finding.Wish;
import org.panwright.kit.Kit;

/** What one exchange would bring, or that none on the shelf would; each starts with a space. */
final class RemedyWords {
  private RemedyWords() {}

  static String of(MuddyPairs pairs, Kit kit) {
    return pairs
        .remedy()
        .map(
            remedy ->
                " %s in place of %s would take %.0f %% of this mud away."
                    .formatted(
                        arriving(remedy, kit),
                        leaving(remedy, kit),
                        100 * (1 - remedy.left() / pairs.lost())))
        .orElse(none("take a good part of this mud away"));
  }

  static String of(DriesGrey grey, Kit kit) {
    return grey.remedy()
        .map(
            remedy ->
                " With %s in place of %s there would be %s."
                    .formatted(
                        arriving(remedy, kit),
                        leaving(remedy, kit),
                        remedy.left() == 0
                            ? "none"
                            : "%.0f in place of %d".formatted(remedy.left(), grey.count())))
        .orElse(none("leave clearly fewer of them"));
  }

  static String of(Metals metals, Kit kit) {
    return metals
        .remedy()
        .map(
            remedy ->
                " %s holds none of these metals and is near %s (ΔE00 %.0f)."
                    .formatted(arriving(remedy, kit), leaving(remedy, kit), remedy.apart()))
        .orElse(
            " No paint of your shelf is near one of these, free of such metals, and takes its place"
                + " without making something else worse.");
  }

  static String of(Nature nature, Kit kit) {
    return nature.remedy().map(remedy -> nature(remedy, kit)).orElse(none("change that"));
  }

  private static String nature(Remedy remedy, Kit kit) {
    return remedy.arrivingId().isPresent()
        ? " %s does not, and is near %s (ΔE00 %.0f)."
            .formatted(arriving(remedy, kit), leaving(remedy, kit), remedy.apart())
        : " %s earns little and could leave.".formatted(leaving(remedy, kit));
  }

  static String of(Wish wish, Kit kit) {
    Optional<Remedy> remedy = wish.remedy();
    if (remedy.isEmpty()) {
      return " But no exchange for it goes without a loss elsewhere.";
    }
    return remedy
        .get()
        .leavingId()
        .map(
            id ->
                " %s could leave for it at the least loss; try it before you buy."
                    .formatted(WordParts.name(kit, id)))
        .orElse(" There is room for it; try it before you buy.");
  }

  private static String none(String does) {
    return " No single exchange with your shelf would %s without making something else worse."
        .formatted(does);
  }

  private static String arriving(Remedy remedy, Kit kit) {
    return WordParts.name(kit, remedy.arrivingId().orElseThrow());
  }

  private static String leaving(Remedy remedy, Kit kit) {
    return WordParts.name(kit, remedy.leavingId().orElseThrow());
  }
}
