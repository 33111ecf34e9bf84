package benchtrue.reconcile;

import benchtrue.intake.PartColumn;
import benchtrue.intake.TableRows;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Lists quantities that stand far outside what is usual for a part. */
final class OutlyingQuantities {
    private static final int FEWEST = 5;
    private static final int TIMES = 10;
    private final Sifting table;

    OutlyingQuantities(Sifting table) {
        this.table = table;
    }

    void list(int[] accepted) {
        TableRows rows = table.rows();
        TreeMap<Integer, List<Integer>> byPart = new TreeMap<>();
        for (int row : accepted) {
            byPart.computeIfAbsent(rows.code(PartColumn.PART, row), first -> new ArrayList<>())
                    .add(row);
        }
        for (List<Integer> uses : byPart.values()) {
            long[] sorted = uses.stream()
                    .mapToLong(row -> rows.value(PartColumn.QUANTITY, row))
                    .sorted()
                    .toArray();
            long usual = sorted[sorted.length / 2];
            uses.stream()
                    .filter(row -> sorted.length >= FEWEST && usual > 0)
                    .filter(row -> rows.value(PartColumn.QUANTITY, row) / TIMES > usual)
                    .forEach(row -> table.doubt(Doubt.OUTLYING_QUANTITY, row));
        }
    }
}
