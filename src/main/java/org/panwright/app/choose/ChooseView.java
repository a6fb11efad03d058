package org.panwright.app.choose;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.panwright.analysis.choose.Choice;
import org.panwright.analysis.choose.Chooser;
import org.panwright.analysis.choose.Proposal;
import org.panwright.analysis.judge.Judgement;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.fx.Parted;
import org.panwright.app.fx.Sentence;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.paint.Paint;
import org.panwright.paint.Paper;
import org.panwright.paint.WashStrengths;
import org.panwright.words.ArrangeWords;
import org.panwright.words.ChooseViewWords;
import org.panwright.words.ChooseWords;

/** Conditions on the left, proposals on the right. */
public final class ChooseView extends BorderPane implements Parted {
  /** What stands above the proposals: whether they are outdated, and what was looked at. */
  private static final int ABOVE = 2;

  private final ChooseModel model;
  private final ToneBook tones;
  private final Dialogs dialogs;
  private final Executor later;
  private final VBox proposals = new VBox();
  private final Label status = Sentence.of(ChooseViewWords.START);
  private final ProgressBar bar = new ProgressBar(0);
  private final Label changed = Sentence.of(ChooseViewWords.CHANGED, "warn");
  private Optional<Against> shownAgainst = Optional.empty();

  /** What the ring and reach of the lineup looked at follow from. */
  private record Against(
      List<String> lineup, List<Paint> paints, Paper paper, WashStrengths washes) {
    static Against of(Judgement judgement) {
      Kit kit = judgement.kit();
      Lineup lineup = kit.lineup(judgement.lineupId()).orElseThrow();
      return new Against(
          lineup.paintIds(kit.boxOf(lineup)), kit.shelf().paints(), kit.paper(), kit.washes());
    }
  }

  /**
   * @param arrange asks how the lineup looked at is to be laid into its wells
   * @param later when proposals are built, and conditions below the first
   */
  public ChooseView(
      ChooseModel model, ToneBook tones, Dialogs dialogs, Runnable arrange, Executor later) {
    this.model = model;
    this.tones = tones;
    this.dialogs = dialogs;
    this.later = later;
    getStyleClass().addAll("pane", "choose");
    ConditionsForm form = new ConditionsForm(model, later);
    ScrollPane left = new ScrollPane(form);
    left.setFitToWidth(true);
    left.setPrefWidth(340);
    left.setMinWidth(320);
    Button propose = new Button(ChooseViewWords.PROPOSE);
    propose.getStyleClass().add("primary");
    propose.setOnAction(event -> model.propose());
    Button stop = new Button(ChooseViewWords.STOP);
    stop.setOnAction(
        event -> {
          model.stop();
          status.setText(ChooseViewWords.STOPPED);
        });
    stop.disableProperty().bind(model.runningProperty().not());
    bar.visibleProperty().bind(model.runningProperty());
    bar.setPrefWidth(110);
    Button lay = new Button(ArrangeWords.LINE);
    lay.setOnAction(event -> arrange.run());
    lay.disableProperty().bind(model.session().lineupProperty().map(Optional::isEmpty));
    HBox looked = new HBox(lay);
    looked.getStyleClass().add("choose-looked");
    HBox buttons = new HBox(8, propose, stop, bar);
    buttons.getStyleClass().add("choose-buttons");
    VBox conditions = new VBox(left, buttons, looked);
    VBox.setVgrow(left, Priority.ALWAYS);
    setLeft(conditions);
    proposals.getStyleClass().add("choose-proposals");
    ScrollPane right = new ScrollPane(proposals);
    right.setFitToWidth(true);
    setCenter(right);
    model.chosenProperty().addListener(found -> show());
    model.progressProperty().addListener(told -> tell());
    model.session().judgementProperty().addListener(judged -> showAgain());
    model.wishesProperty().addListener(asked -> tellChanges());
    proposals.getChildren().setAll(changed, status);
    changed.managedProperty().bind(changed.visibleProperty());
    show();
  }

  @Override
  public List<Node> parts() {
    return List.of(getLeft(), getCenter());
  }

  private void tell() {
    Optional<Chooser.Progress> told = model.progressProperty().get();
    bar.setProgress(told.map(Chooser.Progress::share).orElse(0.0));
    if (told.isPresent() && model.runningProperty().get()) {
      Kit kit = model.session().kit();
      List<String> names =
          told.get().best().stream()
              .flatMap(id -> kit.shelf().find(id).stream())
              .map(Paint::name)
              .toList();
      status.setText(ChooseViewWords.soFar(told.get().worth(), String.join(", ", names)));
    }
  }

  /** Shows the proposals against another lineup, if that is one whose mixes are not the same. */
  private void showAgain() {
    if (model.chosenProperty().get().isPresent()
        && !model.looked().map(Against::of).equals(shownAgainst)) {
      show();
    }
  }

  private void tellChanges() {
    changed.setVisible(
        model
            .chosenProperty()
            .get()
            .filter(chosen -> !chosen.wishes().equals(model.wishesProperty().get()))
            .isPresent());
  }

  private void show() {
    shownAgainst = model.looked().map(Against::of);
    tellChanges();
    Optional<ChooseModel.Chosen> chosen = model.chosenProperty().get();
    if (chosen.isEmpty()) {
      proposals.getChildren().setAll(changed, status);
      return;
    }
    Kit kit = chosen.get().kit();
    if (!chosen.get().choice().contradictions().isEmpty()) {
      status.setText("");
      proposals.getChildren().setAll(changed, status);
      chosen
          .get()
          .choice()
          .contradictions()
          .forEach(
              contradiction -> {
                Label problem = Sentence.of(ChooseWords.sentence(contradiction, kit));
                problem.getStyleClass().add("warn");
                proposals.getChildren().add(problem);
              });
      return;
    }
    status.setText(ChooseWords.looked(chosen.get().choice()));
    Choice choice = chosen.get().choice();
    int count = choice.proposals().size();
    if (!(proposals.getChildren().get(proposals.getChildren().size() - 1)
        instanceof ProposalCard)) {
      proposals.getChildren().setAll(changed, status);
    }
    Optional<Against> against = shownAgainst;
    for (int i = 0; i < count; i++) {
      int place = i;
      later.execute(
          () -> {
            if (model.chosenProperty().get().equals(chosen) && shownAgainst.equals(against)) {
              put(kit, choice, place);
            }
          });
    }
    int end = ABOVE + count;
    if (proposals.getChildren().size() > end) {
      proposals.getChildren().remove(end, proposals.getChildren().size());
    }
  }

  /** Shows a proposal, in the place of the one before it if there is one. */
  private void put(Kit kit, Choice choice, int place) {
    int number = place + 1;
    ProposalCard card =
        new ProposalCard(
            number,
            choice,
            kit,
            tones,
            model.looked(),
            () -> make(choice.proposals().get(place), number));
    if (ABOVE + place < proposals.getChildren().size()) {
      proposals.getChildren().set(ABOVE + place, card);
    } else {
      proposals.getChildren().add(card);
    }
  }

  private void make(Proposal proposal, int number) {
    if (!model.make(proposal, number)) {
      dialogs.tell(
          ChooseViewWords.MAKE,
          model.session().lineup().isEmpty() ? ChooseViewWords.NO_BOX : ChooseViewWords.NO_ROOM);
    }
  }
}
