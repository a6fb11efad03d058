package org.panwright.app.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.panwright.app.fx.Latest;
import org.panwright.kit.Edit;
import org.panwright.kit.KeptMix;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.mixing.Ratio;
import org.panwright.paint.Paint;
import org.panwright.paint.Wash;
import org.panwright.print.CardMixes;
import org.panwright.print.Occasion;
import org.panwright.print.PaperKind;

/**
 * Which mixes the key card shows: those worth having until the painter takes one away or adds one,
 * then those kept with the lineup.
 */
final class MixChoice {
  /** The parts offered for a mix. */
  static final List<Ratio> RATIOS =
      List.of(new Ratio(1, 1), new Ratio(2, 1), new Ratio(1, 2), new Ratio(3, 1), new Ratio(1, 3));

  private final PapersModel model;
  private final Latest<List<KeptMix>> working;
  private final ReadOnlyObjectWrapper<List<KeptMix>> mixes = new ReadOnlyObjectWrapper<>(List.of());

  MixChoice(PapersModel model) {
    this.model = model;
    working = model.latest();
    model.madeProperty().addListener((property, before, now) -> refresh());
    refresh();
  }

  /** The mixes on the card, in its order. */
  ReadOnlyObjectProperty<List<KeptMix>> mixesProperty() {
    return mixes.getReadOnlyProperty();
  }

  /** Whether the painter chose them. */
  boolean isOwn() {
    return lineup().flatMap(Lineup::cardMixes).isPresent();
  }

  /** The paints a mix can be made of. */
  List<Paint> paints() {
    return model.occasion().map(Occasion::paints).orElse(List.of());
  }

  /** The kit, for names. */
  Optional<Kit> kit() {
    return model.occasion().map(Occasion::kit);
  }

  /** A mix in short: the wells of its paints, its parts, its paints. */
  String inShort(KeptMix mix) {
    return model.occasion().map(o -> CardMixes.inShort(o, mix)).orElse("");
  }

  /** Leaves a mix out. */
  void remove(KeptMix mix) {
    List<KeptMix> left = new ArrayList<>(known());
    left.remove(mix);
    keep(Optional.of(left));
  }

  /** Adds a mix of two paints as milk; nothing if it is there or they are the same paint. */
  void add(Paint first, Paint second, Ratio parts) {
    if (first.id().equals(second.id())) {
      return;
    }
    KeptMix added =
        new KeptMix(
            List.of(
                new KeptMix.Part(first.id(), parts.first()),
                new KeptMix.Part(second.id(), parts.second())),
            Wash.MILK,
            "");
    if (known().stream().noneMatch(mix -> mix.key().equals(added.key()))) {
      List<KeptMix> more = new ArrayList<>(known());
      more.add(added);
      keep(Optional.of(more));
    }
  }

  /** Goes back to those worth having. */
  void useUsual() {
    keep(Optional.empty());
  }

  /** All that is kept, those included whose paints are not aboard; else what is shown. */
  private List<KeptMix> known() {
    return lineup().flatMap(Lineup::cardMixes).orElse(mixes.get());
  }

  private Optional<Lineup> lineup() {
    return model.occasion().map(Occasion::lineup);
  }

  private void keep(Optional<List<KeptMix>> wanted) {
    lineup().ifPresent(lineup -> model.perform(new Edit.SetCardMixes(lineup.id(), wanted)));
  }

  private void refresh() {
    Optional<Occasion> occasion = model.occasion();
    if (model.kindProperty().get() == PaperKind.KEY_CARD && occasion.isPresent()) {
      working.request(outdated -> CardMixes.of(occasion.get()), mixes::set, model.failures());
    }
  }
}
