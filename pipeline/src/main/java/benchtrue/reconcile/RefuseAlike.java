package benchtrue.reconcile;

import benchtrue.intake.columns.InputFile;
import benchtrue.intake.columns.Need;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** A needed table of which nearly all rows fail alike is no table with bad rows, but a file that is read in the wrong way. */
final class RefuseAlike {
    private static final double NEARLY_ALL = 0.9;

    /** Of fewer rows each is told alone. */
    private static final int FEWEST = 5;

    private RefuseAlike() {}

    /**
     * Looks at a table whose rows are decided.
     *
     * @throws Refusal naming the files and what the rows have in common
     */
    static void check(RowDispositions table) {
        long rows = table.size() - table.count(RowStatus.REPEATED) - table.count(RowStatus.SUPERSEDED);
        long setAside = table.count(RowStatus.SET_ASIDE);
        if (table.rows().table().need() == Need.OPTIONAL || rows < FEWEST || setAside < NEARLY_ALL * rows) {
            return;
        }
        Map<String, Integer> firstOf = new LinkedHashMap<>();
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (int row = 0; row < table.size(); row++) {
            if (table.fate(row) == RowStatus.SET_ASIDE) {
                String reason = WeighUnread.reason(table.reasons(row));
                firstOf.putIfAbsent(reason, row);
                counts.merge(reason, 1, Integer::sum);
            }
        }
        Map.Entry<String, Integer> most =
                counts.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow();
        if (most.getValue() >= NEARLY_ALL * rows) {
            int row = firstOf.get(most.getKey());
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    files(table) + ": found that " + most.getValue() + " of " + rows + " rows of "
                            + table.rows().table().title() + " can't be used, all for the same reason, first on line "
                            + table.rows().line(row) + ": " + String.join("; ", table.reasons(row))
                            + ". Export the file again, or say in shop.toml how it is to be read.");
        }
    }

    private static String files(RowDispositions table) {
        return table.rows().files().stream().map(InputFile::name).collect(Collectors.joining(", "));
    }
}
