/**
 * What the painter carries between shelf and box, by mouse or by keys.
 *
 * <p>One {@link org.panwright.app.hand.Hand} serves a window; {@link
 * org.panwright.app.hand.Outcome} decides what putting down would bring. The window builds shelf
 * and box like this:
 *
 * <pre>
 * Hand hand = new Hand(session);
 * ToneBook book = new ToneBook(library);
 * new ShelfView(new ShelfModel(session, book, hand, away, Platform::runLater), editors);
 * new BoxView(new BoxModel(session, book, hand), editors);
 * </pre>
 */
package org.panwright.app.hand;
