/** Lineups as a whole: which one is looked at, new ones, copies, names. */
package org.panwright.app.lineup;
