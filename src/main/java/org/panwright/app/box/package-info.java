/**
 * The box drawn to scale with the lineup in its wells.
 *
 * <p>{@link org.panwright.app.box.BoxModel} holds what is shown, {@link
 * org.panwright.app.box.BoxView} shows it; {@link org.panwright.app.box.BoxScale}, {@link
 * org.panwright.app.box.WellSteps} and {@link org.panwright.app.box.NameFit} do its geometry.
 */
package org.panwright.app.box;
