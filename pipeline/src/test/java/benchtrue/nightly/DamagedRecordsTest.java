package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A book that was decided and a month that was sealed are as they were, or the owner hears which file is not. */
class DamagedRecordsTest {
    private static final int BITS = 8;

    /** Damages to the line end behind a seal, which says nothing. */
    private static final int OF_WHITE_SPACE = 4;

    @TempDir
    Path shop;

    private DamagedRecords records;

    @BeforeEach
    void aShop() throws IOException {
        records = new DamagedRecords(shop);
    }

    @ParameterizedTest
    @ValueSource(strings = {DecisionFiles.FOLDER, Seals.FOLDER})
    void noByteOfARecordChangesUnsaid(String folder) throws IOException {
        int damaged = 0;
        for (Path file : records.files(folder)) {
            byte[] whole = Files.readAllBytes(file);
            for (int at = 0; at < whole.length; at++) {
                byte[] flipped = whole.clone();
                flipped[at] ^= (byte) (1 << at % BITS);
                records.read(file, whole, flipped, file.getFileName() + ", byte " + at + " flipped");
                records.read(file, whole, Arrays.copyOf(whole, at), file.getFileName() + ", cut at " + at);
                damaged += 2;
            }
        }
        assertThat(records.refused()).isGreaterThanOrEqualTo(damaged - OF_WHITE_SPACE);
    }

    @ParameterizedTest
    @ValueSource(strings = {DecisionFiles.FOLDER, Seals.FOLDER})
    void aDamagedRecordSaysWhatItSaidOrIsRefusedByName(String folder) throws IOException {
        records.damage(folder, 0, 300);
        assertThat(records.refused()).isGreaterThan(150);
    }

    @Tag("proof")
    @ParameterizedTest
    @ValueSource(strings = {DecisionFiles.FOLDER, Seals.FOLDER})
    void twentyThousandDamagedRecordsSayWhatTheySaidOrAreRefusedByName(String folder) throws IOException {
        records.damage(folder, 300, 20_300);
        System.out.println(folder + ": 20000 damaged, " + records.refused() + " refused, the others as they were");
        assertThat(records.refused()).isGreaterThan(10_000);
    }
}
