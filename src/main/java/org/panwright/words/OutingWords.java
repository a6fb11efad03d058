package org.panwright.words;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.panwright.analysis.outing.OutingDay;
import org.panwright.analysis.outing.PackingNeeds;
import org.panwright.kit.CheckItem;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Outing;

/** What is said about outings. */
public final class OutingWords {
  /** The view. */
  public static final String VIEW = "Outing";

  /** Over the list. */
  public static final String OUTINGS = "Outings";

  /** While there is none. */
  public static final String NONE =
      "No outing yet. Plan one, and this view works out what to pack for it.";

  public static final String NEW = "New outing";
  public static final String COPY = "Copy";
  public static final String REMOVE = "Remove";
  public static final String NEW_NAME = "Outing";
  public static final String NAME = "Name";
  public static final String DATE = "Date";
  public static final String DATE_HINT = "2027-05-15 or 15.5.2027";
  public static final String PLACE = "Place";
  public static final String LINEUP = "Lineup";
  public static final String NO_LINEUP = "none chosen";
  public static final String HOURS = "Hours";
  public static final String SHEETS = "Sheets";
  public static final String SIZE = "Sheet size";
  public static final String WIDTH = "Width, mm";
  public static final String HEIGHT = "Height, mm";
  public static final String SUBJECTS = "Subject colours";
  public static final String NO_SUBJECTS = "None yet; the Subject view reads them from a photo.";
  public static final String RATES = "My rates";
  public static final String RATES_NOTE =
      "Usual practice to start from; hands differ. Copied to the next outing.";
  public static final String USUAL_RATES = "Put the usual rates back";
  public static final String PAINT_RATE = "Paint on an A5 sheet, ml";
  public static final String HOUR_RATE = "Water for an hour, ml";
  public static final String SHEET_RATE = "Water for an A5 sheet, ml";
  public static final String CUPS = "Water cups";
  public static final String CUP_ML = "One cup, ml";
  public static final String SPARE = "Spare sheets for each";
  public static final String WIPES = "Tissues for each sheet";
  public static final String LASTS = "How long the paint lasts";
  public static final String ADD_ITEM = "Add";
  public static final String ADD_PROMPT = "Something else to take";
  public static final String NOTE_PROMPT = "note";
  public static final String UP = "Move up";
  public static final String DOWN = "Move down";
  public static final String REMOVE_ITEM = "Take off the list";
  public static final String USUAL_LIST = "Usual list";
  public static final String MOVE_KEYS = "Alt with the up and down keys moves the entry";

  private OutingWords() {}

  /** Under an outing's name in the list, for example "Saturday, 15 May 2027". */
  public static String day(Optional<LocalDate> date) {
    return date.map(
            day ->
                day.format(
                    DateTimeFormatter.ofLocalizedDate(FormatStyle.FULL).withLocale(Locale.UK)))
        .orElse("no date yet");
  }

  /** What is remarkable about a date; empty if nothing is. */
  public static String dayNote(OutingDay day) {
    return switch (day) {
      case PAST -> "This day is over; the outing is kept.";
      case TODAY -> "That is today.";
      case FAR_AHEAD -> "More than ten years ahead: check the year.";
      case OPEN, AHEAD -> "";
    };
  }

  /** The date typed is none. */
  public static String noDate(String typed) {
    return "%s is no date; write it as %s.".formatted(WordParts.quoted(typed), DATE_HINT);
  }

  /** The number typed is none, or out of its range. */
  public static String noNumber(String typed, double low, double high) {
    return "%s is no number from %s to %s."
        .formatted(WordParts.quoted(typed), WordParts.number(low), WordParts.number(high));
  }

  /** A number of things must be whole. */
  public static String notWhole(String typed) {
    return "%s is no whole number.".formatted(WordParts.quoted(typed));
  }

  /** The text typed is blank. */
  public static String blank() {
    return "A name is needed.";
  }

  /** How much of the list is packed. */
  public static String packed(List<CheckItem> items) {
    long ticked = items.stream().filter(CheckItem::ticked).count();
    return "%d of %d packed".formatted(ticked, items.size());
  }

  /** The field of a note. */
  public static String noteOn(String item) {
    return "Note on " + item;
  }

  /** The menu of an entry. */
  public static String more(String item) {
    return "More for " + item;
  }

  /** A name for a copy. */
  public static String copyOf(String name) {
    return name + " (copy)";
  }

  /** {@code pack} was given no kit, or several. */
  public static String packWantsOneKit(int given) {
    return given == 0
        ? "pack needs the kit file, for example: pack my.kit.json --outing NAME"
        : "pack takes one kit file, %d were given; put names with spaces into quotes."
            .formatted(given);
  }

  /** The kit has no outing of this name. */
  public static String unknownOuting(String name, Kit kit) {
    if (kit.outings().isEmpty()) {
      return "The kit %s has no outing; plan one in the window first."
          .formatted(WordParts.quoted(kit.name()));
    }
    return "The kit has no outing %s; it has %s."
        .formatted(
            WordParts.quoted(name),
            Lists.and(kit.outings().stream().map(o -> WordParts.quoted(o.name())).toList()));
  }

  /** The answer of {@code pack}. */
  public static String pack(Kit kit, Outing outing, PackingNeeds needs, OutingDay day) {
    List<String> lines = new ArrayList<>();
    String where = outing.place().isBlank() ? "" : ", " + outing.place();
    lines.add("%s: %s%s".formatted(outing.name(), day(outing.date()), where));
    if (!dayNote(day).isEmpty()) {
      lines.add(dayNote(day));
    }
    lines.add(
        "%s, %s"
            .formatted(
                WordParts.number(outing.hours()) + " h",
                outing
                    .lineupId()
                    .flatMap(kit::lineup)
                    .map(Lineup::name)
                    .map(name -> "lineup " + name)
                    .orElse("no lineup chosen")));
    lines.add("");
    lines.add(PackingWords.NEEDS);
    addNeeds(lines, needs);
    if (!needs.paints().isEmpty()) {
      lines.add("");
      lines.add(LASTS);
      needs
          .paints()
          .forEach(
              use ->
                  lines.add(
                      "  %-28s %s"
                          .formatted(
                              WordParts.name(kit, use.paintId()), PackingWords.lasting(use))));
    }
    lines.add("");
    List<CheckItem> items = PackingWords.checklist(outing);
    lines.add("%s (%s)".formatted(PackingWords.CHECK_LIST, packed(items)));
    items.forEach(item -> lines.add("  " + line(item, needs, kit)));
    lines.add("");
    lines.add(PackingWords.CAUTIONS);
    PackingWords.cautions(needs, kit).forEach(caution -> lines.add("  " + caution));
    lines.add("");
    lines.add(PackingWords.BASIS);
    return lines.stream()
        .map(WordParts::onOneLine)
        .collect(java.util.stream.Collectors.joining("\n"));
  }

  private static void addNeeds(List<String> lines, PackingNeeds needs) {
    PackingWords.lines(needs)
        .forEach(line -> lines.add("  %-28s %s".formatted(line.name(), line.amount())));
  }

  private static String line(CheckItem item, PackingNeeds needs, Kit kit) {
    String amount = PackingWords.amount(item, needs, kit);
    return "[%s] %s%s%s"
        .formatted(
            item.ticked() ? "x" : " ",
            item.text(),
            amount.isEmpty() ? "" : ": " + amount,
            item.note().isEmpty() ? "" : " (" + item.note() + ")");
  }
}
