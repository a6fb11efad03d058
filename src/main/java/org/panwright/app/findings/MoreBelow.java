package org.panwright.app.findings;

import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** A shade at the foot of a scrolled list that says the list goes on below. */
final class MoreBelow {
  private MoreBelow() {}

  /** The list with the shade over its foot until its end is in sight. */
  static StackPane under(ScrollPane scroll) {
    Region shade = new Region();
    shade.getStyleClass().add("more-below");
    shade.setMouseTransparent(true);
    shade.setMaxHeight(Region.USE_PREF_SIZE);
    shade
        .visibleProperty()
        .bind(
            Bindings.createBooleanBinding(
                () -> isMoreBelow(scroll),
                scroll.vvalueProperty(),
                scroll.viewportBoundsProperty(),
                scroll.getContent().boundsInLocalProperty()));
    StackPane both = new StackPane(scroll, shade);
    StackPane.setAlignment(shade, Pos.BOTTOM_CENTER);
    VBox.setVgrow(both, Priority.ALWAYS);
    return both;
  }

  private static boolean isMoreBelow(ScrollPane scroll) {
    double hidden =
        scroll.getContent().getBoundsInLocal().getHeight() - scroll.getViewportBounds().getHeight();
    return hidden > 1 && scroll.getVvalue() < scroll.getVmax();
  }
}
