package benchtrue.tables;

import benchtrue.calendar.RepairWeeks;
import benchtrue.format.Words;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.WaitReason;

/** {@code weeks.csv}: one row a repair and one a family: how long its visits take, and what to promise today. */
final class WeeksTable {
    private static final double WEEK = 7;

    private WeeksTable() {}

    static ResultTable<RepairWeeks> of(Ledger ledger) {
        ResultTable<RepairWeeks> table = ResultTable.<RepairWeeks>of(
                        "weeks",
                        "One row is one repair, or a family of them: how long visits take of which it is the largest")
                .text("family", "its family", RepairWeeks::family)
                .text(
                        "repair_type",
                        "key of the repair; empty for the family",
                        row -> row.repairType() == Absent.INDEX
                                ? ""
                                : ledger.repairTypes().name(row.repairType()))
                .count("visits", "visits of the last three years", RepairWeeks::visits)
                .count("open", "of them not ready yet", RepairWeeks::open)
                .ratio("middle_weeks", "weeks from coming in within which half were ready", row -> row.middle() / WEEK)
                .ratio("weeks_80", "weeks within which four in five were ready", row -> row.most() / WEEK)
                .ratio("withdrawn", "share that ended without the work", RepairWeeks::withdrawn)
                .ratio("queue_days", "average days until work began", RepairWeeks::queue)
                .ratio(
                        "bench_days",
                        "average days from the first hour to the last, waits left out",
                        RepairWeeks::bench);
        for (WaitReason reason : WaitReason.values()) {
            if (reason != WaitReason.BENCH && reason != WaitReason.PICK_UP) {
                String word = Words.of(reason);
                table.ratio(
                        word.replace('-', '_') + "_days",
                        "average days waited: " + word.replace('-', ' '),
                        row -> row.waits().getOrDefault(reason, 0.0));
            }
        }
        return table.number(
                        "promise_80_days",
                        "days to promise today for it alone, kept four times in five",
                        row -> Absent.has(row.promise()) ? Integer.toString(row.promise()) : "")
                .text(
                        "which_visits",
                        "which of its visits, where a class of instrument or a season differs beyond chance; empty for all",
                        RepairWeeks::group);
    }
}
