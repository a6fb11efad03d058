/**
 * Swatch sheets and hand-painted grids in pictures: where they lie, what their patches look like
 * once light and camera are taken out by the bare paper.
 *
 * <p>Read in this order: {@link org.panwright.swatch.sheet.SheetPlan} (what is printed where),
 * {@link org.panwright.swatch.sheet.SheetFinder} (where the sheet lies in a picture), {@link
 * org.panwright.swatch.sheet.Survey} (colours as on the paper), {@link
 * org.panwright.swatch.sheet.SheetReading} (a whole page). The equations stand in docs/engine.md
 * under "Colours from a picture".
 */
package org.panwright.swatch.sheet;
