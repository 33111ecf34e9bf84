package benchtrue.mapping;

import benchtrue.intake.ColumnProfile;
import benchtrue.intake.FileProfile;
import benchtrue.intake.WideColumns;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Need;
import benchtrue.intake.columns.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A file taken for a table.
 *
 * @param file what stands in it
 * @param table what it is taken for
 * @param matches its columns, in the table's order
 * @param score how much speaks for it; only to be compared
 * @param wide its columns that hold one entry a cell
 */
record Guess(FileProfile file, Table table, List<Match> matches, double score, Optional<WideColumns> wide) {
    Guess {
        matches = List.copyOf(matches);
    }

    /** Returns needed columns that nothing in the file is taken for. */
    List<Column> missing() {
        return untold(Need.REQUIRED);
    }

    /** Returns columns that nothing in the file is taken for and that are worked out then. */
    List<Column> derived() {
        return untold(Need.DERIVED);
    }

    private List<Column> untold(Need need) {
        return table.columns().stream()
                .filter(column -> column.cell().need() == need)
                .filter(column -> matches.stream().noneMatch(match -> match.column() == column && match.isSure()))
                .toList();
    }

    /** Returns columns of the file that are taken for nothing. */
    List<ColumnProfile> unused() {
        List<ColumnProfile> unused = new ArrayList<>(file.columns());
        matches.forEach(match -> unused.remove(match.source()));
        return unused;
    }

    /** Returns how sure the needed columns are on average, 0 to 1. */
    double confidence() {
        List<Match> needed = matches.stream()
                .filter(match -> match.column().cell().need() == Need.REQUIRED)
                .toList();
        double sum = needed.stream().mapToDouble(Match::confidence).sum();
        int all = needed.size() + missing().size();
        return all == 0 ? 0 : sum / all;
    }

    Guess with(List<Match> others) {
        return new Guess(file, table, others, score, wide);
    }
}
