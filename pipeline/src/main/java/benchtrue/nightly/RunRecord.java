package benchtrue.nightly;

import benchtrue.costing.BenchHour;
import benchtrue.costing.CostedLines;
import benchtrue.costing.EarnedMonth;
import benchtrue.costing.Restatement;
import benchtrue.costing.ShopMoney;
import benchtrue.reconcile.Completeness;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.Months;
import benchtrue.shop.Notice;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntToLongFunction;

/**
 * {@code run.json}: everything needed to repeat a run and to check what it published. It holds no clock time, duration,
 * host, path or Java version, so that the same inputs give the same bytes.
 */
final class RunRecord {
    static final String FILE = "run.json";

    private RunRecord() {}

    /** Returns the record's text. */
    static String text(
            String version, Review review, Inputs inputs, List<FileDigest> comparedWith, List<FileDigest> outputs) {
        Map<String, Object> record = new LinkedHashMap<>();
        record.put("program", "benchtrue");
        record.put("version", version);
        record.put("as_of", LocalDate.ofEpochDay(review.ledger().asOf()).toString());
        record.put("settings", review.settings().byKey());
        record.put("inputs", inputs.files());
        record.put("read_as", inputs.told());
        record.put("compared_with", comparedWith);
        record.put("counts", counts(review));
        record.put("missing_tables", List.copyOf(new TreeSet<>(review.ledger().missing())));
        record.put(
                "balances", review.balances().stream().map(RunRecord::balance).toList());
        record.put("money", MoneyRecord.of(review.costs()));
        record.put(
                "restatements",
                review.restatements().stream().map(MoneyRecord::restatement).toList());
        record.put("set_aside", review.setAside());
        record.put("unread", unread(review));
        record.put("warnings", review.notices().stream().map(RunRecord::warning).toList());
        record.put("outputs", outputs);
        return Json.text(record);
    }

    private static Map<String, Object> counts(Review review) {
        Ledger ledger = review.ledger();
        Map<String, Object> counts = new LinkedHashMap<>();
        counts.put("tickets", ledger.tickets().size());
        counts.put("quoted_lines", ledger.lines().size());
        counts.put("time_entries", ledger.time().size());
        counts.put("part_uses", ledger.partUses().size());
        counts.put("price_book_versions", ledger.books().versions().size());
        counts.put("findings", review.findings().repairs().size());
        counts.put("proposals", review.revision().changes().size());
        return counts;
    }

    private static Map<String, Object> balance(Balance balance) {
        Map<String, Long> terms = new LinkedHashMap<>();
        balance.terms().forEach(term -> terms.merge(term.name(), term.amount(), Math::addExact));
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("name", balance.name());
        entry.put("unit", balance.unit());
        entry.put("read", balance.read());
        entry.put("terms", terms);
        return entry;
    }

    private static Map<String, Object> unread(Review review) {
        Completeness read = review.ledger().completeness();
        Map<String, Object> unread = new LinkedHashMap<>();
        unread.put("hours_read", Hours.text(read.readSeconds()));
        unread.put("hours_unread", Hours.text((long) read.unreadSeconds()));
        unread.put("commonest_reason", read.reason());
        unread.put(
                "tables",
                read.tables().stream()
                        .map(table ->
                                Map.of("table", table.table(), "rows", table.read(), "set_aside", table.setAside()))
                        .map(TreeMap::new)
                        .toList());
        unread.put(
                "parts",
                review.answers().unread().stream()
                        .map(part -> new TreeMap<>(
                                Map.of("what", part.what(), "hours_unread", Hours.text((long) part.unreadSeconds()))))
                        .toList());
        return unread;
    }

    private static Map<String, Object> warning(Notice notice) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("code", notice.code());
        entry.put("count", notice.count());
        entry.put("words", notice.words());
        entry.put("examples", notice.examples());
        return entry;
    }

    /** The money of {@code run.json}: amounts as text with four decimals; what is not known is left out. */
    static final class MoneyRecord {
        private final Map<String, Object> record = new LinkedHashMap<>();

        private MoneyRecord() {}

        static Map<String, Object> of(CostedLines costs) {
            Map<String, Object> money = new LinkedHashMap<>();
            money.put("lines", lines(costs));
            ShopMoney shop = costs.shop();
            money.put("bench_hour", benchHour(shop.benchHour()));
            money.put("months", shop.earned().stream().map(MoneyRecord::month).toList());
            money.put("left_out", shop.leftOut());
            return money;
        }

        /** Sums over lines.csv; lines without a figure add nothing. */
        private static Map<String, Object> lines(CostedLines costs) {
            return new MoneyRecord()
                    .put("labour_revenue", sum(costs, costs::labourRevenue))
                    .put("parts_revenue", sum(costs, costs::partsRevenue))
                    .put("labour_cost", sum(costs, costs::labourCost))
                    .put("parts_cost", sum(costs, costs::partsCost))
                    .put("overhead_cost", sum(costs, costs::overheadCost))
                    .put("margin", sum(costs, costs::margin))
                    .record;
        }

        private static long sum(CostedLines costs, IntToLongFunction figure) {
            long sum = Absent.AMOUNT;
            for (int line = 0; line < costs.jobs().size(); line++) {
                long amount = figure.applyAsLong(line);
                if (Absent.has(amount)) {
                    sum = Math.addExact(Absent.firstOf(sum, 0), amount);
                }
            }
            return sum;
        }

        private static Map<String, Object> benchHour(BenchHour hour) {
            return new MoneyRecord()
                    .put("wages", hour.cost().wages())
                    .put("unsold_time", hour.cost().unsold())
                    .put("overtime_premium", hour.cost().overtime())
                    .put("paid_time_not_logged", hour.cost().notLogged())
                    .put("overhead", hour.cost().overhead())
                    .put("supplies", hour.cost().supplies())
                    .put("cost", hour.cost().total())
                    .put("posted", hour.rates().posted())
                    .put("charged_for_an_hour_quoted", hour.rates().charged())
                    .put("earned_for_an_hour_taken", hour.rates().earned())
                    .put("break_even", hour.rates().breakEven())
                    .put("for_target_margin", hour.rates().forTarget())
                    .put("result", hour.result())
                    .record;
        }

        private static Map<String, Object> month(EarnedMonth month) {
            MoneyRecord row = new MoneyRecord();
            row.record.put("month", Months.yearMonth(month.month()).toString());
            row.record.put("lines", month.lines());
            row.record.put("lines_left_out", month.leftOut());
            return row.put("labour_revenue", month.labourRevenue())
                    .put("parts_revenue", month.partsRevenue())
                    .put("labour_cost", month.labourCost())
                    .put("parts_cost", month.partsCost())
                    .put("overhead_cost", month.overheadCost())
                    .put("margin", month.margin())
                    .record;
        }

        static Map<String, Object> restatement(Restatement restated) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("month", Months.yearMonth(restated.month()).toString());
            row.put("figure", restated.figure());
            row.put("sealed", restated.sealed());
            row.put("now", restated.now());
            row.put("causes", restated.causes());
            return row;
        }

        private MoneyRecord put(String key, long tenThousandths) {
            if (Absent.has(tenThousandths)) {
                record.put(key, Money.text(tenThousandths));
            }
            return this;
        }
    }
}
