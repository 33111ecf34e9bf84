package benchtrue.costing;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Months;
import java.util.stream.IntStream;

/** The months that a shop's records touch. */
record MonthSpan(int first, int last) {
    static MonthSpan of(Ledger ledger) {
        int asOf = Months.of(ledger.asOf());
        int[] touched = IntStream.of(
                        earliest(IntStream.range(0, ledger.time().size())
                                .map(entry -> ledger.time().workDay(entry))),
                        earliest(IntStream.range(0, ledger.partUses().size())
                                .map(use -> ledger.partUses().usedOn(use))))
                .filter(Absent::has)
                .map(Months::of)
                .toArray();
        int first = IntStream.concat(
                        IntStream.of(touched),
                        IntStream.concat(
                                ledger.overheads().stream().mapToInt(row -> row.month()),
                                ledger.paidHours().stream().mapToInt(row -> row.month())))
                .min()
                .orElse(asOf);
        return new MonthSpan(Math.min(first, asOf), asOf);
    }

    /** Returns the months in which lines were earned; none where none was. */
    static MonthSpan ofEarned(Earned earned, int lines) {
        int[] days =
                IntStream.range(0, lines).filter(earned::is).map(earned::day).toArray();
        return days.length == 0
                ? new MonthSpan(0, -1)
                : new MonthSpan(
                        Months.of(IntStream.of(days).min().getAsInt()),
                        Months.of(IntStream.of(days).max().getAsInt()));
    }

    private static int earliest(IntStream days) {
        return days.min().orElse(Absent.DAY);
    }

    int months() {
        return last - first + 1;
    }
}
