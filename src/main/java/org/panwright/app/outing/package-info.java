/** Outings: planned days of painting, what they take, and the check list. */
package org.panwright.app.outing;
