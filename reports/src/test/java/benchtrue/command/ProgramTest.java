package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProgramTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        Clock clock = Clock.fixed(Instant.parse("2026-10-31T23:30:00Z"), ZoneOffset.UTC);
        return new Program(new PrintWriter(out), new PrintWriter(err), true, clock, Map.of("NO_COLOR", "1"))
                .run(arguments);
    }

    @Test
    void helpNamesTheCommandsAndTheExitCodes() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString())
                .contains("nightly")
                .contains("75", "another run")
                .doesNotContain("\u001b");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void withoutACommandTheCommandsAreNamed() {
        assertThat(run()).isEqualTo(64);
        assertThat(err.toString()).contains("Which command?", "nightly", "adopt");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "nightly"})
    void everyCommandTellsItsVersion(String command) {
        assertThat(command.isEmpty() ? run("--version") : run(command, "--version"))
                .isZero();
        assertThat(out.toString()).matches("benchtrue \\d+\\.\\d+\\.\\d+\\R");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "nightlly",
                "nightly",
                "nightly --shop",
                "nightly --shop x --as-of 31.10.2026",
                "nightly --shop x --unknown",
                "nightly --shop x --quiet --verbose"
            })
    void argumentsThatAreNotUnderstoodEndWith64AndSayWhy(String arguments) {
        assertThat(run(arguments.isEmpty() ? new String[0] : arguments.split(" ")))
                .isEqualTo(64);
        assertThat(err.toString()).startsWith("benchtrue: ");
        assertThat(out.toString()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "nightly --shop x --as-of 31/10/2026 | found \"31/10/2026\", expected a day such as 2026-10-31",
                "close --shop x --month July | found \"July\", expected a month such as 2026-09",
                "nightly --bogus | Unknown option: '--bogus'",
                "nightly --shpo=x | --shop"
            })
    void whatIsWrongIsSaidInOurOwnWords(String arguments, String words) {
        assertThat(run(arguments.split(" "))).isEqualTo(64);
        assertThat(err.toString()).contains(words).doesNotContain("java.");
    }

    @Test
    void helpWithACommandTellsOfThatCommand() {
        assertThat(run("help", "nightly")).isZero();
        assertThat(out.toString()).contains("--as-of");
    }

    @Test
    void aDayThatHasNotComeIsAskedFor(@TempDir Path folder) {
        assertThat(run("nightly", "--shop", folder.toString(), "--as-of", "2036-10-31"))
                .isEqualTo(64);
        assertThat(err.toString()).contains("found 2036-10-31, but today is 2026-10-31", "--as-of-future");
    }

    @Test
    void aMissingShopFolderEndsWith66(@TempDir Path folder) {
        assertThat(run("nightly", "--shop", folder.resolve("nowhere").toString()))
                .isEqualTo(66);
        assertThat(err.toString()).contains("nowhere: found no such folder");
    }
}
