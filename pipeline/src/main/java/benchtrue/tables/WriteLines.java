package benchtrue.tables;

import benchtrue.costing.CostedLines;
import java.io.IOException;
import java.nio.file.Path;

/** Writes the one table that is as long as the shop's history; its columns are the data contract's. */
public final class WriteLines {
    /** One row a quoted line: its hours and its money. */
    public static final String LINES = "lines.csv";

    /** Writes {@code lines.csv} into a folder that exists. */
    public void write(CostedLines costs, Path folder) throws IOException {
        new LinesTable(costs).write(folder.resolve(LINES));
    }
}
