package org.panwright.app;

import org.panwright.analysis.judge.Judge;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.faults.Faults;
import org.panwright.app.settings.Remembered;
import org.panwright.paint.PigmentLibrary;

/**
 * What the views of one window are built from.
 *
 * @param session the kit that is open, and the only way to change it
 * @param library the pigments
 * @param judge judges lineups, and remembers what their shelves can mix
 * @param tones the looks of paints, worked out once
 * @param dialogs every question to the painter
 * @param editors the editors of the things in the kit
 * @param workers the threads beside JavaFX's own
 * @param faults told of faults of the program
 * @param remembered the settings
 */
public record Means(
    Session session,
    PigmentLibrary library,
    Judge judge,
    ToneBook tones,
    Dialogs dialogs,
    Editors editors,
    Workers workers,
    Faults faults,
    Remembered remembered) {}
