/** The key card in the window: its sheets as they will be printed, options, PDF and printer. */
package org.panwright.app.card;
