package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

class ManualTest {
    private final String page = WriteHelpFiles.manual();

    private static String inRoff(String text) {
        return text.replace("-", "\\-").replace("'", "\\(aq");
    }

    /** Returns the part of the page on one command. */
    private String partOn(String command) {
        int begin = page.indexOf(".SS \"benchtrue " + command + " ");
        assertThat(begin).as(command).isPositive();
        int end = page.indexOf("\n.S", begin + 1);
        return page.substring(begin, end);
    }

    @Test
    void everyCommandStandsInThePageWithEveryOption() {
        for (CommandLine line : WriteHelpFiles.line().getSubcommands().values()) {
            CommandSpec command = line.getCommandSpec();
            String part = partOn(command.name());
            assertThat(part)
                    .contains(inRoff(command.usageMessage().description()[0].substring(0, 20)));
            command.positionalParameters().forEach(one -> assertThat(part).contains("\\fB" + inRoff(one.paramLabel())));
            for (OptionSpec option : command.options()) {
                String where = option.usageHelp() || option.versionHelp() ? page : part;
                assertThat(where).contains(inRoff(option.names()[0]), inRoff(option.longestName()));
            }
        }
    }

    @Test
    void everyExitCodeStandsInThePage() {
        WriteHelpFiles.line()
                .getCommandSpec()
                .usageMessage()
                .exitCodeList()
                .forEach((code, meaning) -> assertThat(page).contains(".TP\n\\fB" + code + "\\fR\n"));
    }

    @Test
    void everyCommandCanBeCompleted() {
        String script = AutoComplete.bash("benchtrue", WriteHelpFiles.line());
        WriteHelpFiles.line()
                .getSubcommands()
                .keySet()
                .forEach(name -> assertThat(script).contains("_picocli_benchtrue_" + name));
        assertThat(script).contains("--as-of").doesNotContain("\r");
    }

    @Test
    void thePageIsSetWithoutAWarning(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("benchtrue.1"), page, StandardCharsets.UTF_8);
        Path said = folder.resolve("said");
        Process groff;
        try {
            groff = new ProcessBuilder("groff", "-man", "-Tutf8", "-ww", "-Kutf8", file.toString())
                    .redirectError(said.toFile())
                    .redirectOutput(folder.resolve("page").toFile())
                    .start();
        } catch (IOException noSuchProgram) {
            assumeTrue(false, "groff is installed");
            return;
        }
        assertThat(groff.waitFor()).isZero();
        assertThat(said).isEmptyFile();
        assertThat(Files.readString(folder.resolve("page")).replaceAll(".\\x08", ""))
                .contains("benchtrue nightly", "ENVIRONMENT", "EXIT STATUS");
    }
}
