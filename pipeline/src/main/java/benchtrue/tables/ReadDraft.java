package benchtrue.tables;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads back what an earlier result proposed, to say how long it has been waiting. */
public final class ReadDraft {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    /** Returns of how many repair types a result folder's {@code revision.csv} proposed to change the hours. */
    public int changes(Path folder) throws IOException {
        int changes = 0;
        try (Reader text = Files.newBufferedReader(folder.resolve(WriteTables.REVISION), StandardCharsets.UTF_8)) {
            for (CSVRecord row : FORMAT.parse(text)) {
                changes += row.get("proposed_hours").equals(row.get("book_hours")) ? 0 : 1;
            }
        } catch (IllegalArgumentException e) {
            throw new IOException(folder.resolve(WriteTables.REVISION) + " is not as it was written", e);
        }
        return changes;
    }
}
