package benchtrue.intake.dialects;

import benchtrue.intake.cells.CellFormat;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.files.DigestedFile;
import benchtrue.settings.FileRule;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
     * Refuses hours that may be hours and minutes: all files of a rule together tell, since one system wrote them.
     *
     * @param files of one table
     */
    public void requireToldHours(List<ExportFile> files) {
        Map<Optional<FileRule>, PointedMinutes> together = new LinkedHashMap<>();
        Map<Optional<FileRule>, ExportFile> first = new HashMap<>();
        for (ExportFile file : files) {
            if (file.rule().flatMap(FileRule::hours).isEmpty()) {
                together.computeIfAbsent(file.rule(), rule -> new PointedMinutes())
                        .take(of(file).pointed(file));
                first.putIfAbsent(file.rule(), file);
            }
        }
        together.forEach((rule, pointed) -> {
            if (rule.isPresent() ? pointed.isOpen() : pointed.denyTheContract()) {
                throw openHours(first.get(rule), pointed);
            }
        });
    }

    private static Refusal openHours(ExportFile file, PointedMinutes pointed) {
        return new Refusal(
                ExitCode.UNUSABLE_FILE,
                file.name() + ": found hours that can be read in two ways: " + pointed.readings()
                        + ". Say which in shop.toml: " + DetectedDialect.rule(file, "hours = \"hours-minutes\"")
                        + " (or hours = \"hours\").");
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
