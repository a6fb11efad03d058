package org.panwright.app.arrange;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.panwright.analysis.arrange.Arranger;
import org.panwright.analysis.arrange.WellOrder;
import org.panwright.app.Session;
import org.panwright.app.box.BoxPicture;
import org.panwright.app.box.StillBox;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.Form;
import org.panwright.app.dialogs.FormGrid;
import org.panwright.app.fx.ByLabel;
import org.panwright.app.fx.Sentence;
import org.panwright.words.ArrangeWords;

/** Asks how the lineup looked at is to be laid into its wells, with its preview; one edit. */
public final class LineupArranger {
  private static final double WIDTH = 560;
  private static final double BOX_HEIGHT = 280;

  private final Session session;
  private final ToneBook tones;
  private final Dialogs dialogs;
  private final Executor away;
  private final Executor home;
  private final Consumer<RuntimeException> failures;

  /**
   * @param away where arrangements are worked out
   * @param home the JavaFX thread
   */
  public LineupArranger(
      Session session,
      ToneBook tones,
      Dialogs dialogs,
      Executor away,
      Executor home,
      Consumer<RuntimeException> failures) {
    this.session = session;
    this.tones = tones;
    this.dialogs = dialogs;
    this.away = away;
    this.home = home;
    this.failures = failures;
  }

  /** Opens the question for the lineup looked at. */
  public void open() {
    session
        .lineup()
        .ifPresent(
            lineup -> {
              if (lineup.fillings().isEmpty()) {
                dialogs.tell(ArrangeWords.TITLE, ArrangeWords.EMPTY);
                return;
              }
              ArrangeModel model =
                  new ArrangeModel(
                      session.kit(), lineup, new Arranger(tones.library()), away, home, failures);
              dialogs.fillIn(form(model)).ifPresent(accepted -> session.perform(model.edit()));
            });
  }

  private Form<Boolean> form(ArrangeModel model) {
    ComboBox<WellOrder> order = new ComboBox<>();
    order.getItems().setAll(WellOrder.values());
    order.setConverter(new ByLabel<>(ArrangeWords::label));
    order.setAccessibleText(ArrangeWords.ORDER);
    order.valueProperty().bindBidirectional(model.orderProperty());
    CheckBox left = new CheckBox(ArrangeWords.LEFT_HAND);
    left.selectedProperty().bindBidirectional(model.leftHandedProperty());
    FormGrid grid = new FormGrid();
    grid.row(ArrangeWords.ORDER, order);
    grid.row("", left);
    StillBox box = new StillBox(paint -> model.wellOf(paint).ifPresent(model::togglePin));
    box.setPrefSize(WIDTH, BOX_HEIGHT);
    Label cost = Sentence.of("");
    Label pins = Sentence.of("");
    pins.getStyleClass().addAll("soft", "small");
    Runnable show =
        () -> {
          box.show(Optional.of(BoxPicture.of(model.kit(), model.after(), tones)));
          box.mark(model.pinnedPaints());
          cost.setText(
              model
                  .laidProperty()
                  .get()
                  .map(laid -> ArrangeWords.cost(model.orderProperty().get(), laid))
                  .orElse(ArrangeWords.WORKING));
          pins.setText(ArrangeWords.pinned(model.pinnedProperty().get().size()));
        };
    model.laidProperty().addListener(changed -> show.run());
    model.pinnedProperty().addListener(changed -> show.run());
    show.run();
    VBox content = new VBox(grid, box, cost, pins);
    content.getStyleClass().add("arrange");
    content.setPrefWidth(WIDTH);
    return new Form<>(
        ArrangeWords.TITLE,
        content,
        ArrangeWords.ACCEPT,
        model.laidProperty().map(Optional::isPresent),
        () -> true,
        order);
  }
}
