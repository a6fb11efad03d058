/** The hue ring: how far the lineup's mixes reach in every hue, before the whole shelf's. */
package org.panwright.app.ring;
