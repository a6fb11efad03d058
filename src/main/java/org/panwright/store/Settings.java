package org.panwright.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the program remembers from one start to the next, apart from any kit.
 *
 * @param dark whether the window is dark
 * @param recent the kits opened or saved last, newest first
 * @param lineups the id of the lineup looked at last, of those kits
 * @param window where the window was, if it was ever open
 * @param dividers where the dividers of the plan stood, each 0..1; empty if never moved
 * @param papers what was chosen about papers, by names that the window gives
 */
public record Settings(
    boolean dark,
    List<Path> recent,
    Map<Path, String> lineups,
    Optional<WindowSpot> window,
    List<Double> dividers,
    Map<String, String> papers) {
  /** What holds before anything was ever set. */
  public static final Settings FIRST =
      new Settings(false, List.of(), Map.of(), Optional.empty(), List.of(), Map.of());

  /** Kits remembered. */
  public static final int MOST_RECENT = 10;

  /** Where a window was, in screen units; all finite. */
  public record WindowSpot(double x, double y, double width, double height, boolean maximised) {}

  public Settings {
    recent = recent.stream().distinct().limit(MOST_RECENT).toList();
    lineups = ofThose(recent, lineups);
    dividers = List.copyOf(dividers);
    papers = Map.copyOf(papers);
  }

  /** The settings with another look. */
  public Settings withDark(boolean changed) {
    return new Settings(changed, recent, lineups, window, dividers, papers);
  }

  /** The settings with a kit in front of the others. */
  public Settings withRecent(Path kit) {
    List<Path> newest = new ArrayList<>(recent);
    newest.remove(kit);
    newest.add(0, kit);
    return new Settings(dark, newest, lineups, window, dividers, papers);
  }

  /** The settings without a kit that is no longer there. */
  public Settings withoutRecent(Path kit) {
    return new Settings(
        dark,
        recent.stream().filter(p -> !p.equals(kit)).toList(),
        lineups,
        window,
        dividers,
        papers);
  }

  /** The settings with the lineup looked at last of a kit opened before. */
  public Settings withLineup(Path kit, String lineupId) {
    Map<Path, String> changed = new HashMap<>(lineups);
    changed.put(kit, lineupId);
    return new Settings(dark, recent, changed, window, dividers, papers);
  }

  /** The settings with the window somewhere else. */
  public Settings withWindow(WindowSpot changed) {
    return new Settings(dark, recent, lineups, Optional.of(changed), dividers, papers);
  }

  /** The settings with the dividers elsewhere. */
  public Settings withDividers(List<Double> changed) {
    return new Settings(dark, recent, lineups, window, changed, papers);
  }

  /** The settings with other choices about papers. */
  public Settings withPapers(Map<String, String> changed) {
    return new Settings(dark, recent, lineups, window, dividers, changed);
  }

  private static Map<Path, String> ofThose(List<Path> kits, Map<Path, String> lineups) {
    Map<Path, String> kept = new HashMap<>(lineups);
    kept.keySet().retainAll(kits);
    return Map.copyOf(kept);
  }
}
