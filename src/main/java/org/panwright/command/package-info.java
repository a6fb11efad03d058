/**
 * The command line: for scripts, checks and machines without a display.
 *
 * <p>Read in this order: {@link org.panwright.command.CommandLine} (the door), {@link
 * org.panwright.command.Command}, then each command: {@link org.panwright.command.Report}, {@link
 * org.panwright.command.Mix}, {@link org.panwright.command.MixCheck}.
 *
 * <p>Knows everything but the window. Its sentences are in {@link
 * org.panwright.words.CommandWords}.
 */
package org.panwright.command;
