package benchtrue.tables;

import benchtrue.costing.Restatement;
import java.io.IOException;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.List;

/** {@code restatements.csv}: figures of sealed months that the records now tell otherwise, and why. */
public final class WriteRestatements {
    private static final List<String> HEADER = List.of("month", "figure", "sealed", "now", "causes");

    /** Writes the file into a folder that exists. */
    public void write(List<Restatement> restatements, Path folder) throws IOException {
        try (CsvFile csv = CsvFile.create(folder.resolve("restatements.csv"), HEADER)) {
            for (Restatement row : restatements) {
                YearMonth month = YearMonth.of(Math.floorDiv(row.month(), 12), Math.floorMod(row.month(), 12) + 1);
                csv.text(month.toString())
                        .text(row.figure())
                        .decimal(row.sealed())
                        .decimal(row.now())
                        .text(String.join("; ", row.causes()));
                csv.endRow();
            }
        }
    }
}
