package benchtrue.reconcile;

import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Exact sums of one figure over a table's rows: what was read, and what became of it. */
final class Totals {
    private static final BigDecimal HALF = new BigDecimal("0.5");
    private static final List<Fate> LEFT_OUT = List.of(Fate.REPEATED, Fate.SUPERSEDED, Fate.SET_ASIDE, Fate.AFTER);
    private final String name;
    private final String unit;
    private final Sifting table;
    private final long[] byFate = new long[Fate.values().length];
    private final List<Balance.Term> shared = new ArrayList<>();
    private BigDecimal rounding = BigDecimal.ZERO;
    private long read;

    Totals(String name, String unit, Sifting table) {
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
        for (Fate fate : LEFT_OUT) {
            terms.add(new Balance.Term(fate.words(), byFate[fate.ordinal()]));
        }
        terms.add(new Balance.Term("lost in rounding", roundedAway));
        terms.addAll(shared);
        terms.add(new Balance.Term(Balance.IN_LEDGER, inLedger));
        return new Balance(name, unit, plus(read, roundedAway), terms);
    }
}
