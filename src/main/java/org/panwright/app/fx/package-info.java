/** Threads of the window: work off the JavaFX thread, newest request wins. */
package org.panwright.app.fx;
