package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.sample.SampleOptions;
import benchtrue.sample.WriteSample;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the job does not need is not read past the parser and reaches no output, message or set-aside file. */
class PersonalDataTest {
    private static final String[] PLANTED = {"Quistgaard", "555-01-0199", "Elmwick", "q@example.org", "bad-debtor"};

    @TempDir
    Path folder;

    @Test
    void customersNamesPhonesAddressesAndNotesReachNoOutput() throws IOException {
        WriteSample.write(SampleOptions.standard(folder).withTickets(150).withYears(1));
        try (Stream<Path> tables =
                Stream.concat(Files.list(folder.resolve("exports")), Files.list(folder.resolve("price-book")))) {
            for (Path table :
                    tables.filter(path -> path.toString().endsWith(".csv")).toList()) {
                plant(table);
            }
        }
        StringWriter words = new StringWriter();
        PrintWriter screen = new PrintWriter(words);
        Clock clock = Clock.fixed(Instant.parse("2026-11-01T02:00:00Z"), ZoneOffset.UTC);
        for (String command : List.of("check", "nightly")) {
            List<String> arguments = new ArrayList<>(List.of(command, "--shop", folder.toString(), "--verbose"));
            if (command.equals("nightly")) {
                arguments.addAll(List.of("--as-of", "2026-10-31"));
            }
            int exit = new Program(screen, screen, false, clock, Map.of()).run(arguments.toArray(String[]::new));
            assertThat(exit).as(words.toString()).isZero();
        }
        assertThat(words.toString()).doesNotContainIgnoringCase(PLANTED);
        searchAll(folder.resolve("out"));
        assertThat(folder.resolve("out/latest/set-aside/time-log.csv")).exists();
    }

    /** Adds columns nobody needs, among them one that slips over the others where a comma is not quoted. */
    private static void plant(Path table) throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(table));
        for (int i = 0; i < lines.size(); i++) {
            lines.set(
                    i,
                    i == 0
                            ? "customer," + lines.get(i) + ",phone,address,email,remarks"
                            : "Ola Quistgaard," + lines.get(i)
                                    + ",555-01-0199,\"9 Elmwick Row, Town\",q@example.org,bad-debtor");
        }
        lines.add("Ola, Quistgaard," + lines.get(1));
        lines.add("555-01-0199,q@example.org,9 Elmwick Row");
        Files.write(table, lines);
    }

    private static void searchAll(Path below) throws IOException {
        try (Stream<Path> files = Files.walk(below)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                search(file.toString(), Files.readAllBytes(file));
            }
        }
    }

    private static void search(String name, byte[] bytes) throws IOException {
        assertThat(new String(bytes, StandardCharsets.ISO_8859_1)).as(name).doesNotContainIgnoringCase(PLANTED);
        if (name.endsWith(".xlsx")) {
            try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
                for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                    search(name + "/" + entry.getName(), zip.readAllBytes());
                }
            }
        }
    }
}
