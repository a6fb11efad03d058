/**
 * Everything that is read from or written to disk: the pigment library, kits, the demo kit and
 * plain settings.
 *
 * <p>Read in this order: {@link org.panwright.store.PigmentLibraryReader}. The only package that
 * knows the JSON library for reading and writing files; it knows no sentences: what went wrong is a
 * {@link org.panwright.kit.FileProblem}.
 */
package org.panwright.store;
