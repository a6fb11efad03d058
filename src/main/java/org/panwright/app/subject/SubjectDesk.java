package org.panwright.app.subject;

import java.nio.file.Path;
import java.util.Optional;
import javafx.application.Platform;
import org.panwright.app.Means;
import org.panwright.app.recipes.RecipesModel;
import org.panwright.app.recipes.RecipesView;
import org.panwright.words.RecipeViewWords;

/** Puts the view of a subject together. */
public final class SubjectDesk {
  private final PhotoBench bench;
  private final SubjectModel model;
  private final SubjectRecipes recipes;
  private final SubjectView view;

  public SubjectDesk(Means means) {
    bench =
        new PhotoBench(
            means.session(),
            new PhotoFile(),
            means.workers().reading(),
            means.workers().painting(),
            Platform::runLater,
            means.faults()::take);
    model = new SubjectModel(means.session(), bench);
    recipes =
        new SubjectRecipes(
            means.session(),
            model,
            means.workers().painting(),
            Platform::runLater,
            means.faults()::take);
    RecipesModel ways =
        new RecipesModel(
            means.session(), means.workers().painting(), Platform::runLater, means.faults()::take);
    RecipesView waysView = new RecipesView(ways, Optional.of(RecipeViewWords.CLOSE));
    waysView.visibleProperty().bind(ways.shownProperty());
    view = new SubjectView(model, recipes, waysView, means.dialogs(), means.workers().later());
  }

  /** The view. */
  public SubjectView view() {
    return view;
  }

  /** Opens a photo and shows it beside what the lineup makes of it. */
  public void paint(Path photo) {
    model.open(photo);
    bench.showPaintedProperty().set(true);
  }

  /** Whether the mixes shown are those of the kit as it is now, and nothing is worked out. */
  public boolean isSettled() {
    return recipes.isSettled() && bench.isSettled();
  }
}
