package benchtrue.reconcile;

import benchtrue.intake.Column;
import benchtrue.intake.TableRows;
import benchtrue.shop.Absent;
import benchtrue.shop.Names;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.IntUnaryOperator;

/** Finds lines by ticket and line key. */
final class LineKeys {
    private final Names names;
    private final int[] codes;
    private final int[] starts;

    /** Takes rows by ticket then line key. */
    LineKeys(List<Integer> order, IntUnaryOperator ticket, IntFunction<String> line, int tickets) {
        names = Names.of(order.stream().map(line::apply).toList());
        codes = order.stream().mapToInt(row -> names.code(line.apply(row))).toArray();
        starts = new int[tickets + 1];
        order.forEach(row -> starts[ticket.applyAsInt(row) + 1]++);
        for (int t = 0; t < tickets; t++) {
            starts[t + 1] += starts[t];
        }
    }

    int code(String line) {
        return names.code(line);
    }

    /** Returns the code of the line key for each code of a column. */
    int[] codes(TableRows rows, Column column) {
        int[] found = new int[rows.distinct(column)];
        for (int code = 0; code < found.length; code++) {
            found[code] = names.code(rows.textOf(column, code));
        }
        return found;
    }

    /** Returns the index of a ticket's line, or {@link Absent#INDEX} where the ticket lacks it. */
    int find(int ticket, int code) {
        for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
            if (codes[line] == code && code != Absent.INDEX) {
                return line;
            }
        }
        return Absent.INDEX;
    }
}
