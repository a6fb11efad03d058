/**
 * How findings are found: a search for each kind, and the case all of them draw from.
 *
 * <p>Read {@link org.panwright.analysis.search.Case} (the lineup before the judge), {@link
 * org.panwright.analysis.search.Searches} (all of them, in order), then any one search. {@link
 * org.panwright.analysis.search.Exchange} says how a paint can come in at the least loss. Public
 * only as far as the packages beside it need; nothing outside {@code analysis} knows it.
 */
package org.panwright.analysis.search;
