package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A check says for words that nobody knows which lines of the settings take them. */
class WordsToPasteTest {
    @TempDir
    Path folder;

    private String check() {
        StringWriter said = new StringWriter();
        PrintWriter screen = new PrintWriter(said);
        Clock clock = Clock.fixed(Instant.parse("2026-11-01T02:00:00Z"), ZoneOffset.UTC);
        new Program(screen, screen, false, clock, Map.of())
                .run("check", "--shop", folder.toString(), "--as-of", "2026-11-01");
        return said.toString();
    }

    private ShopFolder shop() {
        return new ShopFolder(folder)
                .file(
                        "exports/tickets.csv",
                        "ticket,opened,closed,status,instrument_class",
                        "T1,2026-03-02,2026-03-20,Fertig,flat-top",
                        "T2,2026-03-02,2026-03-20,closed,flat-top")
                .file(
                        "exports/quoted-lines.csv",
                        "ticket,line,repair_type,quoted_hours",
                        "T1,1,refretz,12",
                        "T2,1,Sanding a neck,1");
    }

    @Test
    void theLinesCanBePastedAndTheRowsCountThen() throws IOException {
        shop();
        String said = check();
        assertThat(said)
                .contains(
                        "say in shop.toml what it means:",
                        "[words.status]",
                        "\"Fertig\" = \"\"  # open, closed, void",
                        "[words.repair_type]",
                        "\"Sanding a neck\" = \"\"  # a repair type of the price book, or one-off",
                        "\"refretz\" = \"refret\"  # the nearest; else a repair type of the price book, or one-off");
        String pasted = said.lines()
                .filter(line -> line.startsWith("          "))
                .map(line -> line.replace("\"Fertig\" = \"\"", "\"Fertig\" = \"closed\"")
                        .replace("neck\" = \"\"", "neck\" = \"one-off\""))
                .collect(Collectors.joining("\n"));
        Files.writeString(folder.resolve("shop.toml"), pasted);
        assertThat(check()).contains("Every row can be used.");
    }

    @Test
    void aSectionThatStandsThereIsNamedByItsLine() throws IOException {
        shop().file(
                        "shop.toml",
                        "[words.status]",
                        "\"fertig\" = \"closed\"",
                        "[words.repair_type]",
                        "\"x\" = \"refret\"");
        assertThat(check()).contains("# below [words.repair_type] on line 3").doesNotContain("Fertig");
        Files.writeString(
                folder.resolve("shop.toml"),
                "\"refretz\" = \"refret\"\n\"sanding a  Neck\" = \"one-off\"\n",
                StandardOpenOption.APPEND);
        assertThat(check()).contains("\"Sanding a neck\" = \"\"").doesNotContain("\"refretz\" = ");
    }

    @Test
    void aWordOrColumnThatNoTableKnowsIsRefused() {
        shop().file("shop.toml", "[words.kind]", "\"Bank\" = \"bensh\"");
        assertThat(check())
                .contains("shop.toml, line 2: found \"bensh\", which is no word of kind. Did you mean \"bench\"?");
        shop().file("shop.toml", "[words.hours]", "\"one\" = \"1\"");
        assertThat(check()).contains("line 1: found [words.hours], expected the name of a column that holds words");
    }
}
