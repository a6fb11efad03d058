package org.panwright.analysis.choose;

import org.panwright.analysis.balance.HueGroup;
import org.panwright.paint.Lightfastness;

/** Two conditions that cannot both be met; {@code words} says which. */
public sealed interface Contradiction {
  /** No place is asked for. */
  record NoPlaces() implements Contradiction {}

  /** A paint has to be in and must not be in. */
  record MustAndNever(String paintId) implements Contradiction {}

  /** A paint has to be in and is not at hand, though only what is at hand may be. */
  record MustIsNotOwned(String paintId) implements Contradiction {}

  /** A paint has to be in and has several pigments, though only single pigments may be. */
  record MustIsMixed(String paintId) implements Contradiction {}

  /** A paint has to be in and holds cadmium, though none may be. */
  record MustHoldsCadmium(String paintId) implements Contradiction {}

  /** A paint has to be in and fades sooner than allowed, or is unrated. */
  record MustFades(String paintId, Lightfastness rated, Lightfastness floor)
      implements Contradiction {}

  /** More paints have to be in than there are places. */
  record MoreMustsThanPlaces(int musts, int places) implements Contradiction {}

  /** More paints of a group have to be in than the limit allows. */
  record MoreMustsThanLimit(HueGroup group, int musts, int limit) implements Contradiction {}

  /** The shelf has fewer paints than there are places. */
  record ShelfTooSmall(int shelf, int places) implements Contradiction {}

  /** Fewer paints keep to the rules than there are places. */
  record TooFewAllowed(int allowed, int shelf, int places) implements Contradiction {}

  /** The limit on each group allows fewer paints than there are places. */
  record LimitTooTight(int limit, int possible, int places) implements Contradiction {}
}
