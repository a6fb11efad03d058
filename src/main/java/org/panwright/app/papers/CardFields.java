package org.panwright.app.papers;

import javafx.beans.value.ObservableValue;
import javafx.scene.control.CheckBox;
import org.panwright.print.CardFormat;
import org.panwright.print.CardOptions;
import org.panwright.print.Made;
import org.panwright.words.CardWords;
import org.panwright.words.PaperViewWords;

/** What can be chosen about a key card. */
final class CardFields extends OrderFields<CardOptions> {
  CardFields(CardOptions order, PapersModel model) {
    super(CardOptions.class, order, model);
    choice(
        PaperViewWords.SIZE,
        CardFormat.values(),
        size -> PaperViewWords.cardSize(size.name()),
        CardOptions::format,
        CardOptions::withFormat);
    choice(
        PaperViewWords.FIELDS,
        CardOptions.Fields.values(),
        fields -> PaperViewWords.fields(fields == CardOptions.Fields.PREDICTED),
        CardOptions::fields,
        CardOptions::withFields);
    number(PaperViewWords.COPIES, 1, 50, CardOptions::copies, CardOptions::withCopies);
    getChildren().add(list(order, model));
    tick(PaperViewWords.TURNED, CardOptions::turned, CardOptions::withTurned);
    getChildren().add(new MixChooser(new MixChoice(model)));
  }

  /** Ticked and locked as long as the card has no room for everything. */
  private CheckBox list(CardOptions order, PapersModel model) {
    CheckBox list = new CheckBox(PaperViewWords.LIST);
    ObservableValue<Boolean> needed =
        model
            .madeProperty()
            .map(
                made ->
                    made.map(Made::notes)
                        .filter(notes -> notes.contains(CardWords.CONTINUES_ON_LIST))
                        .isPresent());
    boolean[] wanted = {order.list()};
    Runnable show =
        () -> {
          list.setDisable(needed.getValue());
          list.setSelected(needed.getValue() || wanted[0]);
        };
    list.setOnAction(
        event -> {
          wanted[0] = list.isSelected();
          change(card -> card.withList(wanted[0]));
        });
    needed.addListener((property, before, now) -> show.run());
    show.run();
    return list;
  }
}
