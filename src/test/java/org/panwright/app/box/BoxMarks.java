package org.panwright.app.box;

import java.util.List;
import java.util.Set;
import org.panwright.app.Session;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.hand.Hand;
import org.panwright.paint.PigmentLibrary;

/** The wells the box marks for what is picked, for tests of other views. */
public final class BoxMarks {
  private BoxMarks() {}

  public static Set<String> of(Session session) {
    ToneBook tones = new ToneBook(new PigmentLibrary(List.of()));
    return new BoxModel(session, tones, new Hand(session)).relatedProperty().get();
  }
}
