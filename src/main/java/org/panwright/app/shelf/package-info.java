/**
 * The shelf beside the box: every paint of the kit, found, sorted and taken in hand.
 *
 * <p>{@link org.panwright.app.shelf.ShelfModel} holds what is shown, {@link
 * org.panwright.app.shelf.ShelfView} shows it.
 */
package org.panwright.app.shelf;
