package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LastRunTest {
    private static final int DAY = 20_757;

    @TempDir
    Path out;

    private LastRun last() {
        return new LastRun(out);
    }

    @Test
    void afterNoRunAndAfterAGoodOneThereIsNothingToTell() throws IOException {
        assertThat(last().told()).isEmpty();
        last().begins(DAY, "Reading the exports");
        last().published(DAY);
        assertThat(last().told()).isEmpty();
    }

    @Test
    void aRunThatWasKilledIsToldWithItsStage() throws IOException {
        last().begins(DAY, "Reading the exports");
        last().begins(DAY, "Writing the results");
        assertThat(last().told())
                .hasValue("The run before this one, to 2026-10-31, was stopped at \"Writing the results\";"
                        + " the results are whole as they stand.");
    }

    @Test
    void aRunThatWasRefusedIsToldWithItsReason() {
        last().ended(DAY, new Refusal(ExitCode.UNUSABLE_FILE, "tickets.csv: \"opened\" is missing"));
        assertThat(last().told())
                .hasValue("The run before this one, to 2026-10-31, ended with 65:"
                        + " tickets.csv: \"opened\" is missing");
    }

    @Test
    void aNoteThatCannotBeReadIsToldToo() throws IOException {
        Files.createDirectories(out.resolve(".last"));
        Files.writeString(out.resolve(".last/run.json"), "{");
        assertThat(last().told()).hasValueSatisfying(told -> assertThat(told).contains("can't be read"));
    }
}
