package benchtrue.tables;

import benchtrue.revision.BackTest;
import benchtrue.revision.CutOff;
import benchtrue.revision.PastMethod;
import benchtrue.revision.PastScore;
import benchtrue.shop.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** {@code backtest.csv}: one row a method and cut-off; the loss is summed over the jobs, in hours. */
final class BackTestTable {
    private static final List<String> HEADER =
            List.of("method", "cutoff", "lines", "pinball_loss", "coverage", "hours_bias");

    private BackTestTable() {}

    static void write(BackTest test, Path file) throws IOException {
        try (CsvFile csv = CsvFile.create(file, HEADER)) {
            for (CutOff cutOff : test.cutOffs()) {
                for (Map.Entry<PastMethod, PastScore> row : cutOff.scores().entrySet()) {
                    PastScore score = row.getValue();
                    csv.text(Words.of(row.getKey()))
                            .day(cutOff.day())
                            .count(score.lines())
                            .hours(score.loss())
                            .ratio(score.coverage())
                            .ratio(score.hoursBias())
                            .endRow();
                }
            }
        }
    }
}
