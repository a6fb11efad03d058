package org.panwright.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.panwright.kit.FileProblem;
import org.panwright.kit.FileProblem.FieldFault;
import org.panwright.kit.FileProblem.ValueKind;

class FileProblemWordsTest {
  private static final Path FILE = Path.of("some", "folder", "harbour.kit.json");

  @Test
  void aBadFieldIsNamedByItsPath() {
    assertThat(
            FileProblemWords.sentence(
                new FileProblem.LeftOut(
                    FILE,
                    "boxes[0]",
                    "Tin",
                    "boxes[0].widthMm",
                    new FieldFault.OutOfRange(10, 1000, -5))))
        .isEqualTo(
            "The box “Tin” in “harbour.kit.json” was left out: boxes[0].widthMm must lie between 10"
                + " and 1000 but is -5. It stays in the file as it is; put that right in a text"
                + " editor to have it back.");
  }

  @Test
  void aBackupIsOffered() {
    assertThat(
            FileProblemWords.sentence(
                new FileProblem.WithBackup(
                    new FileProblem.CutShort(FILE, 12),
                    FILE.resolveSibling("harbour.kit.json.backup"))))
        .contains("breaks off in line 12", "“harbour.kit.json.backup”");
  }

  @Test
  void longNamesAreCutAndRightToLeftNamesAreFencedOff() {
    String sentence =
        FileProblemWords.happened(
            new FileProblem.LeftOut(
                FILE, "shelf.paints[0]", "x".repeat(300), "a", new FieldFault.Blank()));
    assertThat(sentence).contains("x…”").hasSizeLessThan(160);
    assertThat(WordParts.quoted("أزرق")).isEqualTo("“\u2068أزرق\u2069”");
    assertThat(WordParts.shortened("🎨".repeat(80))).isEqualTo("🎨".repeat(59) + "…");
  }

  @ParameterizedTest
  @MethodSource("everyProblem")
  void everyProblemSaysWhatHappenedAndWhatToDo(FileProblem problem) {
    assertThat(FileProblemWords.happened(problem)).contains("harbour.kit.json").matches("\\S.*\\.");
    assertThat(FileProblemWords.advice(problem)).matches("[A-Z].*\\.");
    assertThat(FileProblemWords.sentence(problem)).doesNotContain("Exception", "null", "[]");
  }

  @ParameterizedTest
  @MethodSource("everyFault")
  void everyFaultOfAFieldHasItsClause(FieldFault fault) {
    assertThat(FieldFaultWords.clause("a.b[0]", fault)).startsWith("a.b[0] ").doesNotEndWith(".");
  }

  static Stream<FileProblem> everyProblem() {
    return Arrays.stream(FileProblem.class.getPermittedSubclasses())
        .map(type -> (FileProblem) sample(type));
  }

  static Stream<FieldFault> everyFault() {
    return Arrays.stream(FieldFault.class.getPermittedSubclasses())
        .map(type -> (FieldFault) sample(type));
  }

  /** A record of this type filled with plausible values. */
  private static Object sample(Class<?> type) {
    RecordComponent[] components = type.getRecordComponents();
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      return type.getDeclaredConstructor(types)
          .newInstance(Arrays.stream(types).map(FileProblemWordsTest::value).toArray());
    } catch (ReflectiveOperationException e) {
      throw new LinkageError(e.getMessage(), e);
    }
  }

  private static Object value(Class<?> type) {
    if (type == Path.class) {
      return FILE;
    } else if (type == String.class) {
      return "word";
    } else if (type == int.class) {
      return 3;
    } else if (type == long.class) {
      return 70L * 1024 * 1024;
    } else if (type == double.class) {
      return 0.5;
    } else if (type == List.class) {
      return List.of("full", "half");
    } else if (type == ValueKind.class) {
      return ValueKind.LIST;
    } else if (type == FieldFault.class) {
      return new FieldFault.Absent();
    } else if (type == LocalDate.class) {
      return LocalDate.of(2031, 5, 4);
    } else if (type == FileProblem.class) {
      return new FileProblem.Empty(FILE);
    }
    throw new AssertionError("no sample of " + type);
  }
}
