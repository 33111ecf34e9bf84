package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.sample.SampleOptions;
import benchtrue.sample.Tidiness;
import benchtrue.sample.WriteSample;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Weeks that an instrument took up humidity or waited for parts are time in the shop and never bench hours. */
class WaitedWeeksTest {
    private static final String AS_OF = "2026-10-31";

    @TempDir
    Path folder;

    private Outputs night(String name, boolean waited) throws IOException {
        Path shop = folder.resolve(name);
        WriteSample.write(SampleOptions.standard(shop)
                .withSeed(41)
                .withTickets(300)
                .withYears(2)
                .with(Tidiness.TIDY));
        if (waited) {
            everyFinishedTicketWaited(shop);
        }
        StringWriter said = new StringWriter();
        int exit = new Program(new PrintWriter(said), new PrintWriter(said), false, Clock.systemUTC(), Map.of())
                .run("nightly", "--shop", shop.toString(), "--as-of", AS_OF);
        assertThat(exit).as(said.toString()).isZero();
        return new Outputs(shop.resolve("out").resolve(AS_OF));
    }

    private static void everyFinishedTicketWaited(Path shop) throws IOException {
        StringBuilder waits = new StringBuilder();
        for (Map<String, String> ticket : new Outputs(shop.resolve("exports")).table("tickets.csv")) {
            if (!ticket.get("closed").isEmpty()) {
                LocalDate opened = LocalDate.parse(ticket.get("opened"));
                waits.append("%s,%s,%s,acclimatising%n".formatted(ticket.get("ticket"), opened, ticket.get("closed")));
            }
        }
        Files.writeString(shop.resolve("exports/waits.csv"), waits, StandardOpenOption.APPEND);
    }

    private static List<String> waited(Outputs outputs) throws IOException {
        return outputs.table("lines.csv").stream()
                .map(line -> line.remove("waited_acclimatising"))
                .toList();
    }

    @Test
    void waitsOfWeeksMoveNoBenchFigure() throws IOException {
        Outputs plain = night("plain", false);
        Outputs waited = night("waited", true);
        assertThat(waited(waited)).isNotEqualTo(waited(plain));
        for (String table : List.of("findings.csv", "causes.csv", "revision.csv")) {
            assertThat(waited.text(table)).as(table).isEqualTo(plain.text(table));
        }
    }
}
