/** Sharing: tables, colour lists and pictures for other programs, and tables taken in. */
package org.panwright.app.share;
