package benchtrue.intake;

import java.util.HashMap;
import java.util.Map;

/** What was told of each file of a table so far. Mutable. */
final class Dialects {
    private final Map<ExportFile, Dialect> told = new HashMap<>();

    /** Returns how a file is written, told from as little of it as will do until it is looked at whole. */
    Dialect of(ExportFile file) {
        return told.computeIfAbsent(file, TellDialect::of);
    }

    /** Looks at a file whole. */
    void lookAgain(ExportFile file) {
        told.put(file, TellDialect.ofWhole(file));
    }
}
