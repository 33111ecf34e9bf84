package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VerifyResultTest {
    @TempDir
    Path out;

    private Path result;

    @BeforeEach
    void aPublishedResult() throws IOException {
        LocalDate date = LocalDate.of(2026, 5, 31);
        new PublishedResults(out).publish(date, WholeRun.seal(out, date, "may"), date);
        result = out.resolve("latest");
    }

    @Test
    void aResultAsWrittenHasNoDifference() throws IOException {
        assertThat(new VerifyResult().verify(result)).isEmpty();
    }

    @Test
    void aChangedAMissingAndAForeignFileAreNamed() throws IOException {
        Files.writeString(result.resolve("foreign.txt"), "x");
        assertThat(new VerifyResult().verify(result)).containsExactly("foreign.txt is not of this run");
        Files.writeString(result.resolve(WholeRun.RESULT), "maY");
        assertThat(new VerifyResult().verify(result))
                .containsExactly("result.txt was changed: 3 bytes, written 3", "foreign.txt is not of this run");
        Files.delete(result.resolve(WholeRun.RESULT));
        assertThat(new VerifyResult().verify(result)).contains("result.txt is missing");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "{\"outputs\": {}}",
                "{\"outputs\": [1]}",
                "{\"outputs\": [{\"file\": 1}]}",
                "{\"outputs\": [],}",
                "{\"outputs\": []} more",
                "{\"outputs\": \"\\x\"}",
                "{\"outputs\": nothing}"
            })
    void aDamagedRecordIsAnErrorNotAGoodResult(String record) throws IOException {
        Files.writeString(result.resolve(RunRecord.FILE), record);
        assertThatThrownBy(() -> new VerifyResult().verify(result)).isInstanceOf(IOException.class);
    }
}
