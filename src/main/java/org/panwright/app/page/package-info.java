/** The page of one paint: its swatches, its curves, and where its colour comes from. */
package org.panwright.app.page;
