/** Chips: how a single paint looks from masstone to wash, worked out once and drawn everywhere. */
package org.panwright.app.chip;
