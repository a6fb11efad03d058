package org.panwright.app;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import org.panwright.analysis.arrange.Arranger;
import org.panwright.analysis.choose.Chooser;
import org.panwright.app.choose.ChooseModel;
import org.panwright.app.choose.ChooseView;
import org.panwright.app.compare.CompareModel;
import org.panwright.app.compare.CompareView;
import org.panwright.app.compare.ComparedPage;
import org.panwright.app.fill.FillModel;
import org.panwright.app.fill.FillView;
import org.panwright.app.outing.OutingModel;
import org.panwright.app.outing.OutingView;
import org.panwright.app.page.PageModel;
import org.panwright.app.page.PageView;
import org.panwright.app.papers.PaperMemory;
import org.panwright.app.papers.PapersModel;
import org.panwright.app.papers.PapersView;
import org.panwright.app.subject.SubjectDesk;
import org.panwright.app.subject.SubjectView;
import org.panwright.app.swatches.SwatchesView;
import org.panwright.app.window.Place;
import org.panwright.print.PaperFormat;
import org.panwright.words.ChooseViewWords;
import org.panwright.words.CompareWords;
import org.panwright.words.FillViewWords;
import org.panwright.words.OutingWords;
import org.panwright.words.PaintPageWords;
import org.panwright.words.SubjectWords;
import org.panwright.words.SwatchesWords;
import org.panwright.words.WindowWords;

/** The views beside the plan, each built when it is first looked at. */
final class FurtherViews {
  private final Means means;
  private final List<BooleanSupplier> settled = new ArrayList<>();
  private Optional<SubjectDesk> subject = Optional.empty();

  FurtherViews(Means means) {
    this.means = means;
  }

  /** The views in the order of their buttons. */
  List<Place> all() {
    return List.of(
        new Place(PaintPageWords.VIEW, this::paint),
        new Place(SwatchesWords.NAME, this::swatches),
        new Place(SubjectWords.PLACE, this::subject),
        new Place(CompareWords.TITLE, this::compare),
        new Place(ChooseViewWords.TITLE, this::choose),
        new Place(FillViewWords.FILL, this::fill),
        new Place(OutingWords.VIEW, this::outing),
        new Place(WindowWords.PAPERS, this::papers));
  }

  /** Whether every view built so far shows the kit as it is now. */
  boolean areSettled() {
    return settled.stream().allMatch(BooleanSupplier::getAsBoolean);
  }

  private ChooseView choose() {
    ChooseModel model =
        new ChooseModel(
            means.session(),
            new Chooser(means.library()),
            new Arranger(means.library()),
            means.workers().searching(),
            Platform::runLater,
            means.faults()::take);
    settled.add(model::isSettled);
    model.proposeAtFirst();
    return new ChooseView(
        model,
        means.tones(),
        means.dialogs(),
        means.editors()::arrangeLineup,
        means.workers().later());
  }

  private CompareView compare() {
    CompareModel model =
        new CompareModel(
            means.session(),
            means.judge(),
            means.workers().judging(),
            Platform::runLater,
            means.faults()::take);
    settled.add(model::isSettled);
    ComparedPage page =
        new ComparedPage(
            model,
            PaperFormat.usualIn(Locale.getDefault().getCountry()),
            means.workers().painting(),
            Platform::runLater,
            means.faults()::take);
    settled.add(page::isSettled);
    return new CompareView(
        model,
        page,
        means.tones(),
        means.dialogs(),
        means.editors()::arrangeLineup,
        means.editors()::openPlan,
        means.workers().later());
  }

  private PageView paint() {
    PageModel model =
        new PageModel(
            means.session(),
            means.library(),
            LocalDate::now,
            means.workers().reading(),
            Platform::runLater,
            means.faults()::take);
    settled.add(model::isSettled);
    return new PageView(model, means.dialogs(), means.workers().later());
  }

  private SwatchesView swatches() {
    SwatchesDesk desk = new SwatchesDesk(means);
    settled.add(desk::isSettled);
    return desk.view();
  }

  private SubjectView subject() {
    SubjectDesk desk = new SubjectDesk(means);
    settled.add(desk::isSettled);
    subject = Optional.of(desk);
    return desk.view();
  }

  /** Opens a photo in the view of the subject, if that has been looked at. */
  void paint(Path photo) {
    subject.ifPresent(desk -> desk.paint(photo));
  }

  private OutingView outing() {
    OutingModel model =
        new OutingModel(
            means.session(),
            means.library(),
            LocalDate::now,
            means.workers().painting(),
            Platform::runLater,
            means.faults()::take);
    settled.add(model::isSettled);
    return new OutingView(model, means.workers().later());
  }

  private PapersView papers() {
    PapersModel model =
        new PapersModel(
            means.session(),
            means.library(),
            PaperMemory.in(
                means.remembered(), PaperFormat.usualIn(Locale.getDefault().getCountry())),
            LocalDate::now,
            means.workers().painting(),
            Platform::runLater,
            means.faults()::take);
    settled.add(model::isSettled);
    return new PapersView(model, means.dialogs(), means.workers().later());
  }

  private FillView fill() {
    FillModel model =
        new FillModel(
            means.session(),
            means.library(),
            LocalDate::now,
            means.workers().painting(),
            Platform::runLater,
            means.faults()::take);
    settled.add(model::isSettled);
    return new FillView(model, means.session(), means.dialogs(), means.workers().later());
  }
}
