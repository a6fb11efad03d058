/** Lineups the program proposes: conditions, proposals, and making one a lineup. */
package org.panwright.app.choose;
