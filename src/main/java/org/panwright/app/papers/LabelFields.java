package org.panwright.app.papers;

import org.panwright.print.LabelOptions;
import org.panwright.words.PaperViewWords;

/** What can be chosen about pan labels. */
final class LabelFields extends OrderFields<LabelOptions> {
  LabelFields(LabelOptions order, PapersModel model) {
    super(LabelOptions.class, order, model);
    choice(
        PaperViewWords.PLACES,
        LabelOptions.Places.values(),
        places -> PaperViewWords.labelPlaces(places.name()),
        LabelOptions::places,
        LabelOptions::withPlaces);
  }
}
