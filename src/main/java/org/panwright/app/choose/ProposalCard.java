package org.panwright.app.choose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.analysis.choose.Choice;
import org.panwright.analysis.choose.Proposal;
import org.panwright.analysis.choose.Reason;
import org.panwright.analysis.compare.Comparison;
import org.panwright.analysis.judge.Judgement;
import org.panwright.app.chip.ChipInk;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.chip.Tones;
import org.panwright.app.fx.Sentence;
import org.panwright.app.ring.TwoRings;
import org.panwright.kit.Kit;
import org.panwright.paint.Paint;
import org.panwright.words.ChooseViewWords;
import org.panwright.words.ChooseWords;
import org.panwright.words.ComparisonWords;
import org.panwright.words.PaintWords;

/** One proposal: its paints, what it is worth, what it wins and gives up, and why. */
final class ProposalCard extends VBox {
  private static final double CHIP_WIDTH = 74;
  private static final double CHIP_HEIGHT = 26;
  private static final double RING = 230;

  ProposalCard(
      int number,
      Choice choice,
      Kit kit,
      ToneBook tones,
      Optional<Judgement> looked,
      Runnable make) {
    Proposal proposal = choice.proposals().get(number - 1);
    Proposal best = choice.proposals().get(0);
    getStyleClass().add("proposal");
    Label heading = new Label(ChooseWords.heading(number));
    heading.getStyleClass().add("pane-title");
    Region space = new Region();
    HBox.setHgrow(space, Priority.ALWAYS);
    Button button = new Button(ChooseViewWords.MAKE);
    button.setOnAction(event -> make.run());
    HBox head = new HBox(8, heading, space, button);
    VBox words = new VBox(6, Sentence.of(ChooseWords.worth(choice, number - 1)));
    words.getChildren().add(soft(ChooseWords.parts(proposal)));
    words.getChildren().add(soft(ChooseWords.darkest(proposal)));
    if (number > 1) {
      words.getChildren().add(Sentence.of(ChooseWords.exchanged(best, proposal, kit)));
    }
    HBox.setHgrow(words, Priority.ALWAYS);
    HBox body = new HBox(16, words);
    looked.ifPresent(
        judgement -> {
          List<Comparison.Shift> lost = Comparison.shifts(proposal.ring(), judgement.ring());
          List<Comparison.Shift> won = Comparison.shifts(judgement.ring(), proposal.ring());
          TwoRings rings = new TwoRings();
          rings.show(judgement.ring(), proposal.ring(), judgement.shelfRing(), lost, won);
          rings.setPrefSize(RING + 100, RING);
          rings.setAccessibleText(ChooseViewWords.RING_KEY);
          Tooltip.install(rings, new Tooltip(ChooseViewWords.RING_KEY));
          words.getChildren().add(part(ChooseViewWords.AGAINST));
          ComparisonWords.hues(lost, won)
              .forEach(text -> words.getChildren().add(Sentence.of(text)));
          words
              .getChildren()
              .add(
                  Sentence.of(
                      ChooseWords.covers(
                          proposal.reach().coveredBy(judgement.reach()),
                          judgement.reach().coveredBy(proposal.reach()))));
          body.getChildren().add(rings);
        });
    getChildren().setAll(head, chips(proposal, kit, tones), body, reasons(proposal, kit));
  }

  private static Node chips(Proposal proposal, Kit kit, ToneBook tones) {
    ChipInk ink = new ChipInk(Orientation.HORIZONTAL, 3);
    FlowPane row = new FlowPane(8, 6);
    List<String> all = new ArrayList<>(proposal.paints());
    for (String id : all) {
      Paint paint = kit.shelf().find(id).orElseThrow();
      boolean dab = proposal.dabs().contains(id);
      Region chip = new Region();
      chip.setMinSize(dab ? CHIP_WIDTH / 2 : CHIP_WIDTH, CHIP_HEIGHT);
      chip.setMaxSize(dab ? CHIP_WIDTH / 2 : CHIP_WIDTH, CHIP_HEIGHT);
      Tones looks = tones.of(paint, kit.paper(), kit.washes());
      chip.setBackground(ink.of(looks));
      Label name = new Label(dab ? ChooseWords.asDab(paint.name()) : paint.name());
      name.getStyleClass().add("small");
      name.setMaxWidth(132);
      String trust = PaintWords.explain(looks.source(), looks.expectedError());
      VBox both = new VBox(2, chip, name);
      Tooltip.install(both, new Tooltip(ChooseViewWords.chip(paint, trust)));
      name.setAccessibleText(ChooseViewWords.chip(paint, trust));
      row.getChildren().add(both);
    }
    return row;
  }

  private static Node reasons(Proposal proposal, Kit kit) {
    VBox list = new VBox(3);
    for (Reason reason : proposal.reasons()) {
      list.getChildren().add(Sentence.of(ChooseWords.reason(reason, kit)));
    }
    TitledPane why = new TitledPane(ChooseViewWords.WHY, list);
    why.setExpanded(false);
    why.setAnimated(false);
    return why;
  }

  private static Label part(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("part-heading");
    return label;
  }

  private static Label soft(String text) {
    Label label = Sentence.of(text);
    label.getStyleClass().add("soft");
    return label;
  }
}
