package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopFolder;
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
import org.junit.jupiter.params.provider.ValueSource;

/** What other systems wrote reaches a terminal as letters, never as a command to it. */
class ForeignTextTest {
    private static final String COMMANDS = "\u001b[2J\u0007\u009b31m\u202eevil\u2066\u200f";

    @TempDir
    Path folder;

    private String said(String... arguments) {
        StringWriter said = new StringWriter();
        PrintWriter screen = new PrintWriter(said);
        Clock clock = Clock.fixed(Instant.parse("2026-11-01T02:00:00Z"), ZoneOffset.UTC);
        new Program(screen, screen, true, clock, Map.of()).run(arguments);
        return said.toString();
    }

    private void speaksPlainly(String said) {
        assertThat(said).contains("evil");
        saysNoCommand(said);
    }

    private void saysNoCommand(String said) {
        assertThat(said.chars().filter(letter -> letter != '\n' && letter != '\r' && letter != '\t'))
                .noneMatch(letter -> Character.isISOControl(letter)
                        || letter >= '\u202a' && letter <= '\u202e'
                        || letter >= '\u2066' && letter <= '\u2069'
                        || letter == '\u200f');
    }

    @Test
    void commandsInCellsStayWhereTheyAre() {
        ShopFolder shop = new ShopFolder(folder)
                .file(
                        "exports/time-log.csv",
                        "entry,ticket,line,technician,work_date,hours",
                        "E1,T1,1,Ada,2026-03-03,6.5",
                        "E2,T" + COMMANDS + ",1,Ada,2026-03-03,1",
                        "E3,T1,1,Ada,2026-03-03," + COMMANDS);
        speaksPlainly(said("check", "--shop", shop.path().toString(), "--as-of", "2026-11-01", "--verbose"));
        saysNoCommand(said("nightly", "--shop", shop.path().toString(), "--as-of", "2026-11-01", "--verbose"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "nightly"})
    void commandsInNamesOfFilesStayWhereTheyAre(String command) {
        ShopFolder shop = new ShopFolder(folder).file("exports/notes " + COMMANDS + ".csv", "a,b");
        speaksPlainly(said(command, "--shop", shop.path().toString(), "--as-of", "2026-11-01", "--verbose"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "nightly"})
    void commandsInSettingsStayWhereTheyAre(String command) {
        ShopFolder shop = new ShopFolder(folder)
                .file("shop.toml", "currency = \"\\u001b[2J\\u009b31m evil\"", "\"\\u001b evil\" = 1");
        speaksPlainly(said(command, "--shop", shop.path().toString(), "--as-of", "2026-11-01"));
    }
}
