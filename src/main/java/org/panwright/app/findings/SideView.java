package org.panwright.app.findings;

import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;

/** Shows one mix while one is picked, and the findings otherwise, in the same place. */
public final class SideView extends StackPane {
  public SideView(Node findings, Node mix, ObservableValue<Boolean> mixPicked) {
    getChildren().addAll(findings, mix);
    mix.visibleProperty().bind(mixPicked);
    findings.visibleProperty().bind(mixPicked.map(picked -> !picked));
  }
}
