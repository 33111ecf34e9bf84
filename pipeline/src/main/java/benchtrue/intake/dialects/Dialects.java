package benchtrue.intake.dialects;

import benchtrue.intake.cells.CellFormat;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.files.DigestedFile;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;

/** What was told of each file of a table so far. Mutable. */
public final class Dialects {
    private final Map<ExportFile, Dialect> told = new HashMap<>();
    private final Map<ExportFile, Dialect> wholes = new HashMap<>();
    private final Map<ExportFile, DigestedFile.Stamp> stamps = new HashMap<>();

    /** Opens a file to be read as it was when its dialect was told: one that changed since would be read as what it was. */
    public DigestedFile open(ExportFile file) throws IOException {
        of(file);
        return new DigestedFile(file.path(), file.name(), stamps.get(file));
    }

    private static DigestedFile.Stamp stamp(ExportFile file) {
        try {
            return DigestedFile.Stamp.of(file.path());
        } catch (IOException failed) {
            throw DialectDetector.unread(file, failed);
        }
    }

    /** Returns how a file is written, told from as little of it as will do until it is looked at whole. */
    public Dialect of(ExportFile file) {
        stamps.computeIfAbsent(file, Dialects::stamp);
        return told.computeIfAbsent(file, DialectDetector::of);
    }

    /** Looks at a file whole. */
    public void lookAgain(ExportFile file) {
        told.put(file, DialectDetector.ofWhole(file));
    }

    /**
     * Returns how the cells of a row are written that comes back from a file: as that file writes them. Where the file has
     * nothing that tells, the row was written in the file it comes back in.
     */
    public CellFormat ofReturned(ExportFile source, Dialect returned) {
        Dialect first = of(source);
        if (first != Dialect.PLAIN) {
            return first.cells();
        }
        return (column, text) -> {
            try {
                return first.cells().canonical(column, text);
            } catch (LookAgain needsMore) {
                Dialect whole = wholes.computeIfAbsent(source, DialectDetector::ofWhole);
                return (whole.tells() ? whole : returned).cells().canonical(column, text);
            }
        };
    }
}
