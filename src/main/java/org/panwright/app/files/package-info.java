/**
 * The kit of a window and its file: open, save, what is not saved yet, and what the painter has to
 * know about it.
 */
package org.panwright.app.files;
