package benchtrue.breakdown;

import java.util.HashMap;
import java.util.Map;
import tech.tablesaw.api.Table;

/** The columns of some jobs as plain arrays, each made once when it is first asked for. */
final class JobColumns {
    private final Table table;
    private final Map<String, double[]> numbers = new HashMap<>();
    private final Map<String, boolean[]> words = new HashMap<>();
    private int[] visits;

    JobColumns(Table table) {
        this.table = table;
    }

    int rows() {
        return table.rowCount();
    }

    /** Returns a column of numbers, NaN where not known. */
    double[] numbers(String column) {
        return numbers.computeIfAbsent(column, name -> table.doubleColumn(name).asDoubleArray());
    }

    /** Returns which rows have a word in a column. */
    boolean[] are(String column, String word) {
        return words.computeIfAbsent(column, name -> {
            boolean[] are = new boolean[rows()];
            for (int row : table.stringColumn(name).isEqualTo(word)) {
                are[row] = true;
            }
            return are;
        });
    }

    /** Returns the number of each row's visit. */
    int[] visits() {
        if (visits == null) {
            visits = table.intColumn(Facts.VISIT).asIntArray();
        }
        return visits;
    }
}
