/**
 * What happens when the program itself is at fault: the log, the note to the painter, the watch.
 */
package org.panwright.app.faults;
