/** The light and the dark look, and who wears which. */
package org.panwright.app.theme;
