package org.panwright.swatch.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** RFC 4180, its section 2 by number, and what is common practice beside it. */
class DelimitedTextTest {
  static Stream<Arguments> odd() {
    return Stream.of(
        row("2.1 a CRLF after each row", "a,b\r\n1,2\r\n", "1", "2"),
        row("2.2 none after the last", "a,b\r\n1,2", "1", "2"),
        row("2.5 quoted cells", "a,b\n\"1\",\"2\"\n", "1", "2"),
        row("2.6 a comma in quotes", "a,b\n\"x, y\",2\n", "x, y", "2"),
        row("2.6 a line break in quotes", "a,b\n\"x\r\ny\",2\n", "x\ny", "2"),
        row("2.7 doubled quotes", "a,b\n\"an \"\"old\"\" one\",2\n", "an \"old\" one", "2"),
        row("semicolons", "a;b\n1,5;2\n", "1,5", "2"),
        row("tabs", "a\tb\n1,5\t2;3\n", "1,5", "2;3"),
        row("a semicolon in a quoted head", "\"a;;;\",b\n1,2\n", "1", "2"),
        row("old line ends", "a,b\r1,2\r", "1", "2"),
        row("blank lines and empty rows", "\n\na,b\n\n,\n1,2\n\n", "1", "2"),
        row("blanks round quotes", "a,b\n \"1 \" , 2 \n", "1", "2"),
        row("a quote inside a bare cell", "a,b\n5\" wide,2\n", "5\" wide", "2"),
        row("an empty quoted cell", "a,b\n\"\",2\n", "", "2"),
        row("a short row", "a,b,c\n1,2\n", "1", "2"),
        row("a long row", "a,b\n1,2,3\n", "1", "2", "3"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("odd")
  void readsTablesAsTheyCome(String what, String text, List<String> cells) throws Exception {
    DelimitedText table = DelimitedText.read(text.getBytes(StandardCharsets.UTF_8));
    assertThat(table.rows()).singleElement().extracting(DelimitedText.Row::cells).isEqualTo(cells);
  }

  static Stream<Arguments> encodings() {
    return Stream.of(
        Arguments.of("UTF-8", StandardCharsets.UTF_8, "", StandardCharsets.UTF_8),
        Arguments.of("UTF-8, marked", StandardCharsets.UTF_8, "\uFEFF", StandardCharsets.UTF_8),
        Arguments.of("UTF-16LE", StandardCharsets.UTF_16LE, "\uFEFF", StandardCharsets.UTF_16),
        Arguments.of("UTF-16BE", StandardCharsets.UTF_16BE, "\uFEFF", StandardCharsets.UTF_16),
        Arguments.of(
            "Windows-1252", Charset.forName("windows-1252"), "", Charset.forName("windows-1252")));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("encodings")
  void findsTheEncoding(String name, Charset written, String mark, Charset found) throws Exception {
    DelimitedText table =
        DelimitedText.read((mark + "Näme;Größe\nGrün – “€”;5\n").getBytes(written));
    assertThat(table.columns()).containsExactly("Näme", "Größe");
    assertThat(table.rows().get(0).cells()).containsExactly("Grün – “€”", "5");
    assertThat(table.encoding()).isEqualTo(found);
    assertThat(table.separator()).isEqualTo(';');
  }

  @Test
  void rowsKnowTheLineTheyBeginIn() throws Exception {
    DelimitedText table =
        DelimitedText.read("a,b\n\n\"x\ny\",2\n3,4\n".getBytes(StandardCharsets.UTF_8));
    assertThat(table.rows()).extracting(DelimitedText.Row::line).containsExactly(3, 5);
  }

  static Stream<Arguments> refused() {
    return Stream.of(
        Arguments.of("", TableFault.NoTable.class),
        Arguments.of("a,b\n", TableFault.NoTable.class),
        Arguments.of(" \n ;\n", TableFault.NoTable.class),
        Arguments.of("a,b\n1,\"2\n3,4\n", TableFault.CutShort.class),
        Arguments.of("PK\0\0a,b\n1,2\n", TableFault.NotText.class));
  }

  @ParameterizedTest
  @MethodSource("refused")
  void whatIsNoTableIsRefusedWithTheReason(String text, Class<? extends TableFault> fault) {
    assertThatThrownBy(() -> DelimitedText.read(text.getBytes(StandardCharsets.UTF_8)))
        .isInstanceOfSatisfying(
            TableFaultException.class, e -> assertThat(e.fault()).isInstanceOf(fault));
  }

  @Test
  void whatIsWrittenComesBack() throws Exception {
    List<List<String>> rows =
        List.of(
            List.of("name", "note"),
            List.of("Grün, hell", "an \"old\" one"),
            List.of("zwei\nZeilen", "a;b\tc"),
            List.of("plain", "=1+2"),
            List.of("\"", ""));
    DelimitedText table =
        DelimitedText.read(DelimitedText.write(rows).getBytes(StandardCharsets.UTF_8));
    List<List<String>> back = new ArrayList<>();
    back.add(table.columns());
    table.rows().forEach(row -> back.add(row.cells()));
    assertThat(back).isEqualTo(rows);
  }

  private static Arguments row(String what, String text, String... cells) {
    return Arguments.of(what, text, List.of(cells));
  }
}
