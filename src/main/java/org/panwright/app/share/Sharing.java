package org.panwright.app.share;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.layout.Region;
import org.panwright.app.Session;
import org.panwright.app.box.BoxView;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.chip.Tones;
import org.panwright.app.dialogs.Dialogs;
import org.panwright.app.dialogs.FileKind;
import org.panwright.app.files.FileFlow;
import org.panwright.app.files.KitDocument;
import org.panwright.app.grid.GridView;
import org.panwright.app.ring.RingView;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.table.PaintTable;
import org.panwright.paint.Paint;
import org.panwright.paint.Wash;
import org.panwright.store.ColourLists;
import org.panwright.store.KitFiles;
import org.panwright.store.NamedColour;
import org.panwright.swatch.table.DelimitedText;
import org.panwright.words.FileProblemWords;
import org.panwright.words.FileWords;
import org.panwright.words.PaintWords;
import org.panwright.words.ShareWords;

/** Passes the kit and what is seen of it on to other people and other programs, as files. */
final class Sharing {
  private static final FileKind KIT =
      new FileKind(ShareWords.SAVE_TITLE, FileWords.KIND, KitFiles.ENDING);
  private static final FileKind TABLE =
      new FileKind(ShareWords.SAVE_TITLE, ShareWords.TABLE_KIND, ".csv");
  private static final FileKind CSS =
      new FileKind(ShareWords.SAVE_TITLE, ShareWords.CSS_KIND, ".css");
  private static final FileKind PALETTE =
      new FileKind(ShareWords.SAVE_TITLE, ShareWords.PALETTE_KIND, ".gpl");
  private static final FileKind PICTURE =
      new FileKind(ShareWords.SAVE_TITLE, ShareWords.PICTURE_KIND, ".png");

  /** So that spreadsheet programs take the text for UTF-8. */
  private static final String MARK = "\uFEFF";

  private static final List<Wash> TONES = List.of(Wash.BUTTER, Wash.MILK, Wash.TEA);

  private final Session session;
  private final KitDocument document;
  private final ToneBook tones;
  private final Dialogs dialogs;
  private final FileSaver saver;
  private final Supplier<Optional<Figures>> figures;

  Sharing(
      Session session,
      KitDocument document,
      ToneBook tones,
      Dialogs dialogs,
      FileSaver saver,
      Supplier<Optional<Figures>> figures) {
    this.session = session;
    this.document = document;
    this.tones = tones;
    this.dialogs = dialogs;
    this.saver = saver;
    this.figures = figures;
  }

  /** The whole kit as one file; the kit stays where it is. */
  void copy() {
    ask(KIT, session.kit().name())
        .ifPresent(file -> document.copyTo(file, () -> told(file), this::notSaved));
  }

  void shelf() {
    save(TABLE, session.kit().name(), () -> table(PaintTable.ofShelf(session.kit())));
  }

  void lineup() {
    session
        .lineup()
        .ifPresent(
            lineup ->
                save(
                    TABLE, lineup.name(), () -> table(PaintTable.ofLineup(session.kit(), lineup))));
  }

  void styleSheet() {
    session
        .lineup()
        .ifPresent(
            lineup ->
                save(
                    CSS,
                    lineup.name(),
                    () -> utf8(ColourLists.css(title(lineup), colours(lineup)))));
  }

  void palette() {
    session
        .lineup()
        .ifPresent(
            lineup ->
                save(
                    PALETTE,
                    lineup.name(),
                    () -> utf8(ColourLists.palette(title(lineup), TONES.size(), colours(lineup)))));
  }

  void gridPicture() {
    figures.get().ifPresent(f -> picture("grid", 180, 150, GridView.figure(f.grid())));
  }

  void ringPicture() {
    figures.get().ifPresent(f -> picture("ring", 120, 110, RingView.figure(f.ring())));
  }

  void boxPicture() {
    figures.get().ifPresent(f -> picture("box", 180, 120, BoxView.figure(f.box())));
  }

  private void picture(String what, double widthMm, double heightMm, Region figure) {
    String name = session.lineup().map(Lineup::name).orElse(session.kit().name());
    ask(PICTURE, name + " " + what)
        .ifPresent(
            file ->
                saver.save(
                    file,
                    PngPicture.of(Camera.take(figure, widthMm, heightMm), Camera.DOTS_PER_INCH),
                    () ->
                        dialogs.tell(
                            ShareWords.SAVED,
                            ShareWords.savedPicture(
                                file.getFileName().toString(), widthMm, heightMm)),
                    this::notSaved));
  }

  private void save(FileKind kind, String name, Supplier<byte[]> content) {
    ask(kind, name)
        .ifPresent(file -> saver.save(file, content.get(), () -> told(file), this::notSaved));
  }

  private Optional<Path> ask(FileKind kind, String name) {
    Optional<Path> folder = document.file().map(own -> own.toAbsolutePath().getParent());
    return dialogs.chooseToSave(kind, folder, FileFlow.fileName(name));
  }

  private void told(Path file) {
    dialogs.tell(ShareWords.SAVED, ShareWords.saved(file.getFileName().toString()));
  }

  private void notSaved(FileProblem problem) {
    dialogs.tell(ShareWords.CANNOT_SAVE, FileProblemWords.sentence(problem));
  }

  private String title(Lineup lineup) {
    return ShareWords.colours(session.kit().name(), lineup.name());
  }

  /** Masstone, milk and tea of every paint of a lineup, in the order of the wells. */
  private List<NamedColour> colours(Lineup lineup) {
    Kit kit = session.kit();
    List<NamedColour> colours = new ArrayList<>();
    for (String id : lineup.paintIds(kit.boxOf(lineup))) {
      Paint paint = kit.shelf().find(id).orElseThrow();
      Tones looks = tones.of(paint, kit.paper(), kit.washes());
      for (Wash wash : TONES) {
        String name =
            ShareWords.toneName(paint.name(), wash == Wash.BUTTER ? "" : PaintWords.label(wash));
        colours.add(new NamedColour(name, looks.washes().get(wash.ordinal()).shown()));
      }
    }
    return colours;
  }

  private static byte[] table(List<List<String>> rows) {
    return utf8(MARK + DelimitedText.write(rows));
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
