package org.panwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.panwright.kit.Box;
import org.panwright.kit.FileProblem;
import org.panwright.kit.Kit;
import org.panwright.kit.PanKind;
import org.panwright.kit.StockEdit;
import org.panwright.kit.Well;

/** Boxes go from one kit to another by a file of their own. */
class BoxFilesTest {
  @TempDir Path folder;

  private final BoxFiles files = new BoxFiles();
  private final Box box = StockedKit.KIT.boxes().get(0);
  private final List<PanKind> pans = StockedKit.KIT.stock().pans();

  @Test
  void aBoxComesBackWithItsPans() throws Exception {
    Path file = folder.resolve("tin.box.json");
    files.write(file, box, pans);
    BoxFiles.Shared shared = files.read(file);
    assertThat(shared.boxes()).containsExactly(box);
    assertThat(shared.notices()).isEmpty();
    assertThat(shared.pans()).contains(pans.get(4));
  }

  @Test
  void anotherKitTakesTheBoxAndTheKindOfPanItLacks() throws Exception {
    Path file = folder.resolve("tin.box.json");
    files.write(file, box, pans);
    BoxFiles.Shared shared = files.read(file);
    Kit empty = Kit.empty("other");
    Kit other = new StockEdit.AddSharedBox(shared.boxes().get(0), shared.pans()).apply(empty);
    assertThat(other.boxes()).containsExactly(box);
    assertThat(other.stock().pans()).hasSize(5);
    Kit twice = new StockEdit.AddSharedBox(box, shared.pans()).apply(other);
    assertThat(twice.boxes()).hasSize(2);
    assertThat(twice.boxes().get(1).id()).isNotEqualTo(box.id());
    assertThat(twice.stock().pans()).as("the same kind is not added twice").hasSize(5);
  }

  @Test
  void aKindOfPanOfTheSameNameAndOtherSizesComesInBesideIt() {
    PanKind own = pans.get(4);
    PanKind larger =
        new PanKind(own.id(), own.name(), own.outer(), own.inner(), own.taperMm(), 3.1);
    Kit kit = new StockEdit.AddSharedBox(box, List.of(larger)).apply(StockedKit.KIT);
    Well well = kit.boxes().get(1).find("w2").orElseThrow();
    assertThat(well.panId()).isNotEqualTo(Optional.of(own.id()));
    assertThat(kit.stock().panFor(well).orElseThrow().brimMl()).isEqualTo(3.1);
    assertThat(kit.stock().pan(own.id())).contains(own);
  }

  @Test
  void whatWasInTheFileStaysBesideIt() throws Exception {
    Path file = folder.resolve("tin.box.json");
    Files.writeString(file, "precious");
    files.write(file, box, pans);
    assertThat(Files.readString(KitFiles.backupOf(file))).isEqualTo("precious");
  }

  @Test
  void whatIsNoBoxIsNamed() throws Exception {
    Path file = folder.resolve("tin.box.json");
    Files.writeString(file, "{\"schemaVersion\": 1, \"shelf\": {}}");
    assertThat(problem(file)).isEqualTo(new FileProblem.NotABox(file));
    Files.writeString(
        file,
        "{\"schemaVersion\": 1, \"boxes\": [{\"id\": \"b\", \"name\": \"b\", \"widthMm\": -4,"
            + " \"heightMm\": 20}]}");
    assertThat(problem(file)).isInstanceOf(FileProblem.LeftOut.class);
    assertThat(problem(folder.resolve("nowhere"))).isInstanceOf(FileProblem.Missing.class);
  }

  private FileProblem problem(Path file) {
    return catchThrowableOfType(FileProblemException.class, () -> files.read(file)).problem();
  }
}
