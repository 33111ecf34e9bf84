package benchtrue.intake.dialects;

import benchtrue.settings.TotalsRow;
import benchtrue.shop.Absent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Tells, over a whole file, which of its rows only repeat or name others: totals and subtotals, headings, the column names
 * again. Mutable.
 */
final class RowForms {
    private static final int MOST_LABELS = 2;
    private static final int MOST_MARKS = 64;

    private final RowCells cells;
    private final Optional<TotalsRow> said;
    private final Map<Integer, String> reasons = new TreeMap<>();
    private final Map<Integer, String> headings = new HashMap<>();
    private final Map<Integer, String> suspects = new TreeMap<>();
    private final Set<String> keys = new HashSet<>();
    private final List<long[]> marks = new ArrayList<>();
    private final long[] sums;
    private int sinceMark;
    private int last = -1;
    private int end = Integer.MAX_VALUE;

    /**
     * Takes where a row's columns stand.
     *
     * @param said whether the last row is a total, as the owner says
     */
    RowForms(RowCells cells, Optional<TotalsRow> said) {
        this.cells = cells;
        this.said = said;
        sums = new long[cells.numbers()];
        marks.add(sums.clone());
    }

    /** Takes the next row. */
    void take(List<String> row, int line) {
        last = line;
        Optional<String> why = cells.empty(row) == 0 && !cells.says(row) ? Optional.empty() : total(row);
        if (why.isPresent() && said.filter(TotalsRow.ABSENT::equals).isEmpty()) {
            reasons.put(line, why.get());
            mark();
        } else if (cells.repeatsHeader(row)) {
            reasons.put(line, "the column names again");
        } else if (isHeading(row)) {
            suspects.put(line, cells.key(row));
            headings.put(line, cells.label(row));
            mark();
        } else {
            add(row);
        }
    }

    private void mark() {
        if (sinceMark > 0) {
            marks.add(sums.clone());
            sinceMark = 0;
            if (marks.size() > MOST_MARKS) {
                marks.remove(1);
            }
        }
    }

    private void add(List<String> row) {
        sinceMark++;
        keys.add(cells.key(row));
        for (int i = 0; i < sums.length; i++) {
            long number = cells.number(row, i);
            sums[i] += Absent.has(number) ? number : 0;
        }
    }

    private Optional<String> total(List<String> row) {
        boolean labelled = cells.says(row);
        boolean bare = cells.labels(row) <= 1;
        if (labelled
                && (bare && cells.empty(row) > 0 || row.stream().anyMatch(TotalWords::isWord) && cells.lacks(row))) {
            return Optional.of("it says so");
        }
        boolean addsUp = marks.stream().anyMatch(mark -> addsUp(row, mark));
        if (addsUp && labelled) {
            return Optional.of("it says so and adds up the rows above");
        }
        boolean onlyNumbers = bare && cells.lacksAll(row);
        return addsUp && onlyNumbers && (sinceMark > 1 || marks.size() > 1 && cells.labels(row) == 0)
                ? Optional.of("it adds up the rows above")
                : Optional.empty();
    }

    private boolean addsUp(List<String> row, long[] mark) {
        int found = 0;
        for (int i = 0; i < sums.length; i++) {
            long total = cells.number(row, i);
            if (Absent.has(total) && total != 0) {
                if (StrictMath.abs(sums[i] - mark[i] - total) > cells.rounding(i)) {
                    return false;
                }
                found++;
            }
        }
        return found > 0;
    }

    private boolean isHeading(List<String> row) {
        int filled = cells.filled(row);
        return filled > 0
                && filled <= MOST_LABELS
                && filled + 1 < cells.wanted()
                && (cells.empty(row) > 0 || !cells.isKeyed() && sums.length > 0)
                && IntStream.range(0, sums.length).allMatch(i -> cells.isBlank(row, i));
    }

    /** Ends the file: what stands where a key does, and looks like one, is a row that lacks the rest. */
    RowForms end() {
        suspects.forEach((line, key) -> {
            if (key.isEmpty() || !keys.contains(key)) {
                reasons.put(line, "a heading");
            } else {
                headings.remove(line);
            }
        });
        if (said.filter(TotalsRow.PRESENT::equals).isPresent() && last > 0) {
            reasons.put(last, "shop.toml says so");
        }
        return this;
    }

    /** Ends the table where another begins. */
    void endAt(int line) {
        end = line;
    }

    /** Returns whether a line lies behind the table. */
    boolean isBehind(int line) {
        return line >= end;
    }

    /** Returns the lines that are left out, each with the reason. */
    Map<Integer, String> leftOut() {
        return reasons;
    }

    /** Returns the heading on a line, or null. */
    String heading(int line) {
        return headings.get(line);
    }
}
