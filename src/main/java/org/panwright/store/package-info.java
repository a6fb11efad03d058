/**
 * Everything that is read from or written to disk: the pigment library, kits, the demo kit and the
 * settings.
 *
 * <p>Read in this order: {@link org.panwright.store.KitFiles} with {@link
 * org.panwright.store.OpenedKit}, {@link org.panwright.store.SafeFile}, {@link
 * org.panwright.store.PigmentLibraryReader}, {@link org.panwright.store.DemoKit}; inside, {@code
 * KitReader}, {@code KitWriter} and the {@link org.panwright.store.Keepsake} that ties them
 * together. The format of kits is described in {@code docs/file-format.md}.
 *
 * <p>It knows no sentences: what went wrong is a {@link org.panwright.kit.FileProblem}.
 */
package org.panwright.store;
