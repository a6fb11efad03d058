/** The papers in the window: their sheets as they will be printed, options, PDF and printer. */
package org.panwright.app.papers;
