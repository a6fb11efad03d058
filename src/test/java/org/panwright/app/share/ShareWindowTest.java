package org.panwright.app.share;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.analysis.judge.Judge;
import org.panwright.app.Session;
import org.panwright.app.Sessions;
import org.panwright.app.ThreePaintKit;
import org.panwright.app.box.BoxModel;
import org.panwright.app.chip.ToneBook;
import org.panwright.app.dialogs.ScriptedDialogs;
import org.panwright.app.files.KitDocument;
import org.panwright.app.grid.GridModel;
import org.panwright.app.hand.Hand;
import org.panwright.app.ring.RingModel;
import org.panwright.kit.Kit;
import org.panwright.paint.Paint;
import org.panwright.paint.PigmentLibrary;
import org.panwright.store.KitFiles;
import org.panwright.store.OpenedKit;
import org.panwright.store.PigmentLibraryReader;
import org.panwright.words.ShareWords;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@Tag("window")
@ExtendWith(ApplicationExtension.class)
class ShareWindowTest {
  private static final PigmentLibrary LIBRARY = PigmentLibraryReader.read();

  @TempDir Path folder;
  private final Session session =
      new Session(
          new Judge(LIBRARY),
          Sessions.AT_ONCE,
          Sessions.AT_ONCE,
          Sessions::fail,
          ThreePaintKit.kit());
  private final ScriptedDialogs dialogs = new ScriptedDialogs();
  private Menu menu;

  @Start
  void start(Stage stage) {
    stage.show();
  }

  @BeforeEach
  void build(FxRobot robot) {
    robot.interact(this::buildMenu);
  }

  private void buildMenu() {
    ToneBook tones = new ToneBook(LIBRARY);
    Figures figures =
        new Figures(
            new BoxModel(session, tones, new Hand(session)),
            new GridModel(session, Sessions.AT_ONCE, Sessions.AT_ONCE, Sessions::fail),
            new RingModel(session));
    KitDocument document =
        new KitDocument(
            session,
            OpenedKit.unsaved(session.kit()),
            new KitFiles(LIBRARY),
            Sessions.AT_ONCE,
            Sessions.AT_ONCE,
            Sessions::fail);
    menu =
        new ShareActions(
                session,
                document,
                tones,
                dialogs,
                Sessions.AT_ONCE,
                Sessions.AT_ONCE,
                Sessions::fail,
                () -> Optional.of(figures))
            .menu();
  }

  /** 180 mm at 300 dots per inch are 2125.98 dots, 150 mm 1771.7, 120 mm 1417.3, 110 mm 1299.2. */
  @Test
  void picturesAreOfTheSizeTheyStateAndNotBlank(FxRobot robot) throws Exception {
    assertPicture(robot, ShareWords.GRID_OUT, 2126, 1772);
    assertPicture(robot, ShareWords.RING_OUT, 1417, 1299);
    assertPicture(robot, ShareWords.BOX_OUT, 2126, 1417);
    assertThat(dialogs.said()).allSatisfy(said -> assertThat(said).contains("300 dots per inch"));
  }

  private void assertPicture(FxRobot robot, String action, int width, int height) throws Exception {
    Path file = folder.resolve(width + "x" + height + ".png");
    dialogs.choose(file);
    robot.interact(() -> item(action).fire());
    BufferedImage picture = ImageIO.read(file.toFile());
    assertThat(picture.getWidth()).isEqualTo(width);
    assertThat(picture.getHeight()).isEqualTo(height);
    Set<Integer> colours = new HashSet<>();
    for (int x = 0; x < width; x += 7) {
      for (int y = 0; y < height; y += 7) {
        colours.add(picture.getRGB(x, y));
      }
    }
    assertThat(colours).as(action).hasSizeGreaterThan(10);
    if (action.equals(ShareWords.GRID_OUT)) {
      // Two paints make a grid that leaves the right half free.
      return;
    }
    // Painted to the far corner, not only in the part a smaller canvas would fill.
    Set<Integer> right = new HashSet<>();
    for (int y = 0; y < height; y += 3) {
      right.add(picture.getRGB(width * 5 / 8, y));
    }
    assertThat(right).as(action + ", right of the middle").hasSizeGreaterThan(1);
  }

  @Test
  void aCopyIsTheWholeKitAndTheKitStaysUnsaved(FxRobot robot) throws Exception {
    Path file = folder.resolve("copy.kit.json");
    dialogs.choose(file);
    robot.interact(() -> item(ShareWords.COPY).fire());
    assertThat(new KitFiles(LIBRARY).open(file).kit()).isEqualTo(session.kit());
  }

  @Test
  void theShelfGoesOutAsATableAndComesBackWithoutLoss(FxRobot robot) throws Exception {
    Path file = folder.resolve("shelf.csv");
    dialogs.choose(file);
    robot.interact(() -> item(ShareWords.SHELF_OUT).fire());
    String text = Files.readString(file);
    assertThat(text)
        .startsWith("\uFEFFname,maker,ownership,pigments")
        .contains("yellow,,owned,PY154");
    Kit before = session.kit();
    dialogs.choose(file).answer(ShareWords.ACCEPT);
    robot.interact(() -> item(ShareWords.SHELF_IN).fire());
    assertThat(session.kit()).as("all are there already").isEqualTo(before);
  }

  @Test
  void aTableIsTakenInAsOneEdit(FxRobot robot) throws Exception {
    Path file = folder.resolve("new.csv");
    Files.writeString(file, "Paint;Pigments\nSea;PB60\nSand;PY43\n", StandardCharsets.UTF_16);
    dialogs.choose(file).answer("not now");
    robot.interact(() -> item(ShareWords.SHELF_IN).fire());
    assertThat(session.kit()).isEqualTo(ThreePaintKit.kit());
    dialogs.choose(file).answer(ShareWords.ACCEPT);
    robot.interact(() -> item(ShareWords.SHELF_IN).fire());
    assertThat(session.kit().shelf().paints()).extracting(Paint::name).contains("Sea", "Sand");
    robot.interact(session::undo);
    assertThat(session.kit()).isEqualTo(ThreePaintKit.kit());
  }

  @Test
  void whatIsNoTableIsToldAndChangesNothing(FxRobot robot) throws Exception {
    Path file = folder.resolve("empty.csv");
    Files.write(file, new byte[0]);
    dialogs.choose(file);
    robot.interact(() -> item(ShareWords.SHELF_IN).fire());
    assertThat(dialogs.said())
        .singleElement()
        .satisfies(said -> assertThat(said).contains("empty.csv").contains("Nothing was changed"));
    assertThat(session.kit()).isEqualTo(ThreePaintKit.kit());
  }

  @Test
  void coloursGoOutAsStyleSheetAndPalette(FxRobot robot) throws Exception {
    Path css = folder.resolve("colours.css");
    Path palette = folder.resolve("colours.gpl");
    dialogs.choose(css).choose(palette);
    robot.interact(() -> item(ShareWords.CSS_OUT).fire());
    robot.interact(() -> item(ShareWords.PALETTE_OUT).fire());
    assertThat(Files.readString(css)).contains("--yellow:").contains("--blue-milk:");
    assertThat(Files.readAllLines(palette).subList(4, 10)).allMatch(l -> l.matches("[ \\d]+\t.+"));
  }

  private MenuItem item(String label) {
    List<MenuItem> found =
        menu.getItems().stream().filter(item -> label.equals(item.getText())).toList();
    assertThat(found).as(label).hasSize(1);
    return found.get(0);
  }
}
