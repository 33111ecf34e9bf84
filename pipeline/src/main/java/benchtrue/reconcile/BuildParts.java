package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.TextColumn;
import benchtrue.intake.columns.PartColumn;
import benchtrue.shop.Absent;
import benchtrue.shop.Money;
import benchtrue.shop.Names;
import benchtrue.shop.PartKind;
import benchtrue.shop.PartUse;
import benchtrue.shop.PartUses;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Builds the parts drawn by ticket. */
final class BuildParts {
    private static final PartKind[] KINDS = PartKind.values();

    /** Costs above this can't be counted; no single part costs a thousand million. */
    private static final double MOST_MONEY = 1e9;

    private final RowDispositions table;
    private final TableRows rows;
    private final TicketKeys keys;
    private final LineKeys lines;
    private final Names names;
    private final int[] ticketOf;
    private final int[] lineOf;

    BuildParts(RowDispositions table, TicketKeys keys, LineKeys lines) {
        this.table = table;
        rows = table.rows();
        this.keys = keys;
        this.lines = lines;
        ticketOf = keys.find(rows.column(PartColumn.TICKET));
        lineOf = lines.codes(rows.column(PartColumn.LINE));
        TextColumn parts = rows.column(PartColumn.PART);
        names = Names.of(
                IntStream.range(1, parts.distinct()).mapToObj(parts::text).toList());
    }

    Names names() {
        return names;
    }

    PartUses build(int asOf) {
        for (int row = 0; row < table.size(); row++) {
            if (table.inQuestion(row)) {
                check(row, asOf);
            }
        }
        int[] order = RowOrder.sorted(RowOrder.accepted(table), this::ticket, row -> rows.day(PartColumn.USED_ON, row));
        List<PartUse> uses = new ArrayList<>(order.length);
        for (int row : order) {
            uses.add(use(row));
        }
        new OutlyingQuantities(table).list(order);
        return new PartUses(uses);
    }

    private void check(int row, int asOf) {
        int ticket = ticket(row);
        if (ticket == TicketKeys.UNKNOWN) {
            String key = rows.text(PartColumn.TICKET, row);
            table.setAside(row, PartColumn.TICKET, key, keys.expected(key));
        }
        double price = Math.max(amount(PartColumn.UNIT_COST, row), amount(PartColumn.UNIT_CHARGE, row));
        if (Math.abs(amount(PartColumn.QUANTITY, row)) * price > MOST_MONEY) {
            String found = rows.text(PartColumn.QUANTITY, row);
            table.setAside(row, PartColumn.QUANTITY, found, "an amount of money that a shop can have");
        }
        if (ticket == TicketKeys.AFTER || rows.day(PartColumn.USED_ON, row) > asOf) {
            table.after(row);
        }
    }

    private double amount(PartColumn column, int row) {
        long value = rows.value(column, row);
        return Absent.has(value) ? Money.units(value) : 0;
    }

    private int ticket(int row) {
        return ticketOf[rows.code(PartColumn.TICKET, row)];
    }

    private PartUse use(int row) {
        long kind = rows.value(PartColumn.KIND, row);
        if (rows.value(PartColumn.UNIT_COST, row) == 0) {
            table.doubt(Doubt.ZERO_COST_PART, row);
        }
        return new PartUse(
                ticket(row),
                line(row),
                names.code(rows.text(PartColumn.PART, row)),
                rows.value(PartColumn.QUANTITY, row),
                rows.value(PartColumn.UNIT_COST, row),
                rows.value(PartColumn.UNIT_CHARGE, row),
                rows.day(PartColumn.USED_ON, row),
                KINDS[Absent.has(kind) ? (int) kind : 0]);
    }

    private int line(int row) {
        int code = rows.code(PartColumn.LINE, row);
        if (code == 0) {
            return Absent.INDEX;
        }
        int line = ticket(row) < 0 ? Absent.INDEX : lines.find(ticket(row), lineOf[code]);
        if (line == Absent.INDEX) {
            table.doubt(Doubt.UNKNOWN_PART_LINE, row);
        }
        return line;
    }

    /** Lists quantities that stand far outside what is usual for a part. */
    static final class OutlyingQuantities {
        private static final int FEWEST = 5;
        private static final int TIMES = 10;
        private final RowDispositions table;

        OutlyingQuantities(RowDispositions table) {
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
}
