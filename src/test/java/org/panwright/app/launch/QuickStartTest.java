package org.panwright.app.launch;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuickStartTest {
  private static final String[] STARTED = {"-Xmx200m", "-jar", "program.jar", "my.kit.json"};
  private final Properties system = new Properties();

  @BeforeEach
  void useAJvm() {
    system.setProperty("java.home", "/jvm/17");
  }

  @Test
  void theSecondProcessGetsAllArgumentsOfTheFirst() {
    List<String> command = command(true);
    assertThat(command.get(0)).isEqualTo(Path.of("/jvm/17", "bin", "java").toString());
    assertThat(command).endsWith(STARTED);
  }

  @Test
  void anArchiveIsReadIfThereElseWritten() {
    assertThat(command(true)).contains("-XX:SharedArchiveFile=a.jsa");
    assertThat(command(false)).contains("-XX:ArchiveClassesAtExit=a.jsa");
  }

  @Test
  void theSecondProcessKnowsThatItIs() {
    assertThat(QuickStart.isSecond(system)).isFalse();
    system.setProperty("panwright.start.second", "yes");
    assertThat(QuickStart.isSecond(system)).isTrue();
    assertThat(command(true)).contains("-Dpanwright.start.second=yes");
  }

  @Test
  void theSecondProcessStartsNoThird(@TempDir Path folder) {
    system.setProperty("panwright.start.second", "yes");
    assertThat(QuickStart.run(folder, system)).isEmpty();
  }

  @Test
  void oneProcessIsEnoughIfAskedFor(@TempDir Path folder) {
    system.setProperty("panwright.start.archive", "no");
    assertThat(QuickStart.run(folder, system)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "an archive named by hand, -XX:SharedArchiveFile=mine.jsa, true",
    "a debugger, -agentlib:jdwp=transport=dt_socket, true",
    "a profiler, -javaagent:profiler.jar, true",
    "sharing turned off, -Xshare:off, true",
    "a heap limit, -Xmx200m, false",
  })
  void aJvmThatHasItsOwnWayIsLeftAlone(String what, String option, boolean left) {
    assertThat(QuickStart.hasItsOwnWay(new String[] {option, "-jar", "p.jar"})).isEqualTo(left);
  }

  @Test
  void theProgramsOwnArgumentsAreNotTheJvms() {
    assertThat(QuickStart.hasItsOwnWay(new String[] {"-jar", "p.jar", "-Xshare.kit.json"}))
        .isFalse();
  }

  private List<String> command(boolean isThere) {
    return QuickStart.command(isThere, Path.of("a.jsa"), STARTED, system);
  }
}
