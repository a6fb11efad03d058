/**
 * The view in which the painter's own swatches are read from a photo or scan and the paints learn
 * from them.
 *
 * <p>Read in this order: {@link org.panwright.app.swatches.PictureModel} (the picture and its four
 * corners), {@link org.panwright.app.swatches.SheetModel} (a printed sheet), {@link
 * org.panwright.app.swatches.SwatchesView}.
 */
package org.panwright.app.swatches;
