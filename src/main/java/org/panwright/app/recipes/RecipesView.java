package org.panwright.app.recipes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.panwright.analysis.subject.Match;
import org.panwright.app.fx.Sentence;
import org.panwright.kit.Kit;
import org.panwright.words.RecipeViewWords;
import org.panwright.words.RecipeWords;

/** The picked colour with the mixes of the box that come nearest to it. */
public final class RecipesView extends VBox {
  private static final PseudoClass PROBLEM = PseudoClass.getPseudoClass("problem");

  private final RecipesModel model;
  private final Label title = Sentence.of("", "pane-title");
  private final Label figures = Sentence.of("", "soft");
  private final Label problem = new Label(RecipeViewWords.NO_COLOUR);
  private final TextField typed = new TextField();
  private final VBox recipes = new VBox();

  /**
   * @param leave the words of the button that leaves; without them there is none
   */
  public RecipesView(RecipesModel model, Optional<String> leave) {
    this.model = model;
    getStyleClass().addAll("pane", "recipes-view");
    title.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(title, Priority.ALWAYS);
    HBox head = new HBox(title);
    head.getStyleClass().add("pane-head");
    head.setAlignment(Pos.TOP_LEFT);
    leave.ifPresent(words -> head.getChildren().add(back(words)));
    recipes.getStyleClass().add("recipe-list");
    VBox content = new VBox(figures, typing(), recipes);
    content.getStyleClass().add("mix-content");
    ScrollPane scroll = new ScrollPane(content);
    scroll.setFitToWidth(true);
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().setAll(head, scroll);
    model.pictureProperty().addListener((o, before, now) -> now.ifPresent(this::show));
    model.pictureProperty().get().ifPresent(this::show);
  }

  private Button back(String words) {
    Button back = new Button(words);
    back.setMinWidth(Region.USE_PREF_SIZE);
    back.setOnAction(e -> model.leave());
    return back;
  }

  private Node typing() {
    Label label = new Label(RecipeViewWords.TYPE);
    typed.setPromptText(RecipeViewWords.TYPE_PROMPT);
    label.setLabelFor(typed);
    HBox.setHgrow(typed, Priority.ALWAYS);
    problem.getStyleClass().add("field-problem");
    problem.setMinHeight(Region.USE_PREF_SIZE);
    complain(false);
    typed.setOnAction(e -> complain(!model.type(typed.getText())));
    typed.textProperty().addListener(o -> complain(false));
    HBox line = new HBox(label, typed);
    line.getStyleClass().add("lineup-bar");
    return new VBox(line, problem);
  }

  private void complain(boolean wrong) {
    typed.pseudoClassStateChanged(PROBLEM, wrong);
    problem.setVisible(wrong);
    problem.setManaged(wrong);
  }

  private void show(RecipesPicture picture) {
    title.setText(picture.wanted().name());
    figures.setText(RecipeViewWords.figures(picture.wanted().lab()));
    List<Node> rows = new ArrayList<>();
    rows.add(heading(RecipeViewWords.FROM_BOX));
    if (picture.fromBox().isEmpty()) {
      rows.add(Sentence.of(RecipeViewWords.NOTHING, "soft"));
    }
    picture.fromBox().forEach(match -> rows.add(card(picture, match, true)));
    double best =
        picture.fromBox().stream().mapToDouble(Match::deltaE).min().orElse(Double.MAX_VALUE);
    picture
        .fromShelf()
        .filter(match -> match.deltaE() < best)
        .ifPresent(
            match -> {
              rows.add(heading(RecipeViewWords.FROM_SHELF));
              rows.add(card(picture, match, false));
            });
    if (picture.error() > 0) {
      rows.add(Sentence.of(RecipeViewWords.expect(picture.error()), "soft", "small"));
    }
    recipes.getChildren().setAll(rows);
  }

  private static Label heading(String words) {
    Label heading = new Label(words);
    heading.getStyleClass().add("part-heading");
    return heading;
  }

  private Node card(RecipesPicture picture, Match match, boolean inBox) {
    Kit kit = picture.kit();
    Label recipe = Sentence.of(RecipeWords.match(match, kit));
    Label near = new Label(RecipeWords.nearness(match, picture.mixer().trust(match.recipe())));
    near.getStyleClass().addAll("soft", "small");
    VBox card = new VBox(new TwoSwatches(picture.wanted().lab(), match.lab()), recipe, near);
    card.getStyleClass().add("finding");
    if (inBox) {
      card.getChildren().add(mark(match, recipe.getText()));
    }
    return card;
  }

  private Button mark(Match match, String recipe) {
    Button mark = new Button();
    mark.textProperty()
        .bind(
            model
                .markedProperty()
                .map(
                    marked ->
                        model.isMarked(match) ? RecipeViewWords.UNMARK : RecipeViewWords.MARK));
    mark.setAccessibleText(RecipeViewWords.MARK + ": " + recipe);
    mark.setOnAction(e -> model.mark(match));
    return mark;
  }
}
