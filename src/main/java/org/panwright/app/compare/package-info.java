/** Two lineups side by side: which, and what going from one to the other wins and loses. */
package org.panwright.app.compare;
