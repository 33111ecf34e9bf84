package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.TextColumn;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.InputFile;
import benchtrue.intake.columns.LineColumn;
import benchtrue.intake.columns.OverheadColumn;
import benchtrue.intake.columns.PaidColumn;
import benchtrue.intake.columns.PartColumn;
import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Overhead;
import benchtrue.shop.PaidHours;
import benchtrue.shop.PartUses;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.Refusal;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;

/** Sets what was read against where it went, in rows, seconds and ten-thousandths. */
final class Balances {
    private static final String SECONDS = "seconds";
    private static final String MONEY = "ten-thousandths";

    private Balances() {}

    /** Balances the rows of each file of a table. */
    static List<Balance> rows(RowDispositions table) {
        List<Balance> balances = new ArrayList<>();
        for (InputFile file : table.rows().files()) {
            long[] counts = new long[RowStatus.values().length];
            for (int row = file.firstRow(); row < file.firstRow() + file.rows(); row++) {
                counts[table.fate(row).ordinal()]++;
            }
            List<Balance.Term> terms = new ArrayList<>();
            for (RowStatus fate : RowStatus.values()) {
                terms.add(new Balance.Term(fate.words(), counts[fate.ordinal()]));
            }
            balances.add(new Balance("rows of " + file.name(), "rows", file.rows(), terms));
        }
        return balances;
    }

    /** Balances the hours of the time log. */
    static Balance hours(RowDispositions table, EntryHours hours, long sharedAway, long inLedger) {
        TableRows rows = table.rows();
        Totals totals = new Totals("hours", SECONDS, table);
        for (int row = 0; row < rows.size(); row++) {
            totals.add(row, hours.seconds(row), hours.rounding(row));
        }
        totals.term("counted once where clock times overlap", sharedAway);
        return totals.balance(inLedger);
    }

    /** Balances the money of the quoted lines. */
    static List<Balance> lines(RowDispositions table, QuotedLines lines) {
        return List.of(
                column("labour quoted", MONEY, table, LineColumn.QUOTED_LABOUR, sum(lines.size(), lines::quotedLabour)),
                column("parts quoted", MONEY, table, LineColumn.QUOTED_PARTS, sum(lines.size(), lines::quotedParts)),
                column("labour billed", MONEY, table, LineColumn.BILLED_LABOUR, sum(lines.size(), lines::billedLabour)),
                column("parts billed", MONEY, table, LineColumn.BILLED_PARTS, sum(lines.size(), lines::billedParts)));
    }

    static Balance overheads(RowDispositions table, List<Overhead> overheads) {
        long inLedger = overheads.stream().mapToLong(Overhead::amount).sum();
        return column("overheads", MONEY, table, OverheadColumn.AMOUNT, inLedger);
    }

    static Balance paid(RowDispositions table, List<PaidHours> paid) {
        long inLedger = paid.stream().mapToLong(PaidHours::seconds).sum();
        return column("hours paid", SECONDS, table, PaidColumn.HOURS, inLedger);
    }

    private static Balance column(String name, String unit, RowDispositions table, Column column, long inLedger) {
        TextColumn texts = table.rows().column(column);
        Totals totals = new Totals(name, unit, table);
        for (int row = 0; row < table.size(); row++) {
            totals.add(row, texts.valueAt(row), texts.rounding(texts.code(row)));
        }
        return totals.balance(inLedger);
    }

    /** Balances what the parts drawn cost: quantity times unit cost, each row rounded once. */
    static Balance parts(RowDispositions table, PartUses uses) {
        TableRows rows = table.rows();
        Totals totals = new Totals("parts drawn at cost", MONEY, table);
        for (int row = 0; row < rows.size(); row++) {
            long quantity = rows.value(PartColumn.QUANTITY, row);
            long cost = rows.value(PartColumn.UNIT_COST, row);
            if (Absent.has(quantity) && Absent.has(cost)) {
                BigDecimal exact = new BigDecimal(BigInteger.valueOf(quantity).multiply(BigInteger.valueOf(cost)), 4);
                BigDecimal whole = exact.setScale(0, RoundingMode.HALF_EVEN);
                boolean countable = whole.toBigInteger().bitLength() < Long.SIZE - 1;
                totals.add(row, countable ? whole.longValueExact() : Absent.AMOUNT, whole.subtract(exact));
            }
        }
        return totals.balance(sum(uses.size(), row -> uses.get(row).cost()));
    }

    private static long sum(int rows, IntToLongFunction value) {
        return IntStream.range(0, rows).mapToLong(value).filter(Absent::has).reduce(0, Math::addExact);
    }

    /** Exact sums of one figure over a table's rows: what was read, and what became of it. */
    static final class Totals {
        private static final BigDecimal HALF = new BigDecimal("0.5");
        private static final List<RowStatus> LEFT_OUT =
                List.of(RowStatus.REPEATED, RowStatus.SUPERSEDED, RowStatus.SET_ASIDE, RowStatus.AFTER);
        private final String name;
        private final String unit;
        private final RowDispositions table;
        private final long[] byFate = new long[RowStatus.values().length];
        private final List<Balance.Term> shared = new ArrayList<>();
        private BigDecimal rounding = BigDecimal.ZERO;
        private long read;

        Totals(String name, String unit, RowDispositions table) {
            this.name = name;
            this.unit = unit;
            this.table = table;
        }

        /** Adds a row's figure, and what rounding to the unit had added to it. */
        void add(int row, long value, BigDecimal rounded) {
            if (Absent.has(value)) {
                int fate = table.fate(row).ordinal();
                byFate[fate] = plus(byFate[fate], value);
                read = plus(read, value);
                if (rounded.signum() != 0) {
                    rounding = rounding.add(rounded);
                }
            }
        }

        private long plus(long left, long right) {
            try {
                return Math.addExact(left, right);
            } catch (ArithmeticException tooLarge) {
                throw new Refusal(
                        ExitCode.UNUSABLE_FILE,
                        table.rows().files().get(0).name() + ": found " + name
                                + " that add up to more than can be counted, expected the amounts of one shop.",
                        tooLarge);
            }
        }

        /** Names a further place where some of what was accepted went. */
        void term(String place, long amount) {
            shared.add(new Balance.Term(place, amount));
        }

        /**
         * Returns the balance. What was read is the exact sum before rounding, given in whole units.
         *
         * @param inLedger the sum of the figure over the ledger, counted there
         */
        Balance balance(long inLedger) {
            long roundedAway =
                    rounding.negate().add(HALF).setScale(0, RoundingMode.FLOOR).longValueExact();
            List<Balance.Term> terms = new ArrayList<>();
            for (RowStatus fate : LEFT_OUT) {
                terms.add(new Balance.Term(fate.words(), byFate[fate.ordinal()]));
            }
            terms.add(new Balance.Term("lost in rounding", roundedAway));
            terms.addAll(shared);
            terms.add(new Balance.Term(Balance.IN_LEDGER, inLedger));
            return new Balance(name, unit, plus(read, roundedAway), terms);
        }
    }
}
