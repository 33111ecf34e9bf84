package benchtrue.reconcile;

import benchtrue.intake.columns.Table;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** The rows that can't be used, with every reason and the original text of their canonical columns. */
public final class SetAside {
    private final Map<Table, RowDispositions> tables = new EnumMap<>(Table.class);
    private final List<DoubtfulRow> doubtful = new ArrayList<>();

    SetAside(Map<Table, RowDispositions> tables) {
        tables.values().forEach(table -> doubtful.addAll(table.doubtful()));
        tables.forEach((table, sifting) -> {
            if (sifting.count(RowStatus.SET_ASIDE) > 0) {
                this.tables.put(table, sifting);
            }
        });
    }

    public List<Table> tables() {
        return List.copyOf(tables.keySet());
    }

    /** Returns the rows that are used although something about them is doubtful, table by table. */
    public List<DoubtfulRow> doubtful() {
        return List.copyOf(doubtful);
    }

    public long count(Table table) {
        return tables.containsKey(table) ? tables.get(table).count(RowStatus.SET_ASIDE) : 0;
    }

    /** Hands over each row of a table that was set aside, older exports first. */
    public void forEach(Table table, Consumer<SetAsideRow> taker) {
        RowDispositions sifting = tables.get(table);
        for (int row = 0; sifting != null && row < sifting.size(); row++) {
            if (sifting.fate(row) == RowStatus.SET_ASIDE) {
                taker.accept(row(sifting, row));
            }
        }
    }

    private static SetAsideRow row(RowDispositions table, int row) {
        List<String> texts = new ArrayList<>();
        RowText.columns(table.rows()).forEach(column -> texts.add(table.rows().text(column, row)));
        return new SetAsideRow(
                table.rows().files().get(table.rows().file(row)).name(),
                table.rows().line(row),
                RowText.digest(table.rows(), row),
                table.reasons(row),
                texts);
    }
}
