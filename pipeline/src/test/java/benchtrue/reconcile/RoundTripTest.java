package benchtrue.reconcile;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopFolder;
import benchtrue.intake.InAnyDialect;
import benchtrue.intake.ReadExports;
import benchtrue.intake.columns.Table;
import benchtrue.settings.Settings;
import benchtrue.shop.Balance;
import benchtrue.shop.Refusal;
import benchtrue.shop.TimeEntries;
import benchtrue.tables.WriteSetAside;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rows that were set aside, corrected and put back, over random untidy shops. */
class RoundTripTest {
    @TempDir
    Path folder;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 25);
    }

    static LongStream fewSeeds() {
        return LongStream.rangeClosed(1, 6);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void correctedHoursCountOnceAndTheRowsTheyCameFromAreSuperseded(long seed) {
        ShopFolder shop = new DirtyShop(folder, seed).shop();
        Reconciled before = shop.reconciled();
        List<SetAsideRow> aside = rows(before, Table.TIME_LOG);
        String ticket = before.ledger().tickets().ticket(0);
        putBack(shop, "time-log-corrected", corrected(aside, ticket));

        Reconciled after = shop.reconciled();
        assertThat(after.setAside().count(Table.TIME_LOG)).as("seed %d", seed).isZero();
        assertThat(seconds(after)).isEqualTo(seconds(before) + 3_600L * aside.size());
        assertThat(rowsOf(after, "time-log", "superseded") - rowsOf(before, "time-log", "superseded"))
                .isGreaterThanOrEqualTo(aside.size());

        putBack(shop, "time-log-corrected-again", corrected(aside, ticket));
        assertThat(seconds(shop.reconciled())).as("the same file twice").isEqualTo(seconds(after));
    }

    /** A table, a corrected row of it as header and cells, and how many rows of it the ledger has. */
    private record Corrected(Table table, String header, String cells, ToIntFunction<Ledger> count) {}

    private static final List<Corrected> OTHERS = List.of(
            new Corrected(
                    Table.TICKETS,
                    "ticket,opened,instrument_class",
                    "KEY,2026-10-20,flat-top",
                    l -> l.tickets().size()),
            new Corrected(
                    Table.QUOTED_LINES,
                    "ticket,line,repair_type,quoted_hours",
                    "TICKET,KEY,setup,1",
                    l -> l.lines().size()),
            new Corrected(
                    Table.PARTS_USAGE,
                    "use,ticket,part,quantity,unit_cost,used_on",
                    "KEY,TICKET,nut,1,1,2026-10-20",
                    l -> l.partUses().size()),
            new Corrected(
                    Table.TECHNICIANS,
                    "technician,hourly_wage,effective_from",
                    "KEY,10,2026-10-20",
                    l -> l.wages().size()),
            new Corrected(
                    Table.PAID_HOURS,
                    "technician,month,hours",
                    "KEY,2026-10,100",
                    l -> l.paidHours().size()),
            new Corrected(
                    Table.OVERHEADS,
                    "month,account,amount",
                    "2026-10,KEY,10",
                    l -> l.overheads().size()),
            new Corrected(
                    Table.WAITS,
                    "ticket,from,reason",
                    "TICKET,DAY,pick-up",
                    l -> l.waits().size()),
            new Corrected(
                    Table.PRICE_BOOK,
                    "repair_type,title,family,book_hours,book_labour",
                    "KEY,Corrected,setup,1,100",
                    l -> typesByVersion(l).stream().mapToInt(Integer::intValue).sum()));

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void correctedRowsOfEveryOtherTableCountOnceAndTheRowsTheyCameFromAreSuperseded(long seed) {
        ShopFolder shop = new DirtyShop(folder, seed).shop();
        Reconciled before = shop.reconciled();
        String ticket = before.ledger().tickets().ticket(0);
        for (Corrected corrected : OTHERS) {
            putBack(shop, corrected, "-corrected", rows(before, corrected.table()), ticket);
        }
        Reconciled after = shop.reconciled();
        for (Corrected corrected : OTHERS) {
            int aside = rows(before, corrected.table()).size();
            String which = "seed " + seed + ", " + corrected.table();
            assertThat(after.setAside().count(corrected.table())).as(which).isZero();
            assertThat(corrected.count().applyAsInt(after.ledger()))
                    .as(which)
                    .isEqualTo(corrected.count().applyAsInt(before.ledger()) + aside);
            String table = corrected.table().title();
            assertThat(rowsOf(after, table, "superseded") - rowsOf(before, table, "superseded"))
                    .as(which)
                    .isGreaterThanOrEqualTo(aside);
            putBack(shop, corrected, "-corrected-again", rows(before, corrected.table()), ticket);
        }
        assertThat(shop.reconciled().ledger())
                .as("the same files twice")
                .usingRecursiveComparison()
                .isEqualTo(after.ledger());
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void correctedRowsOfThePriceBookReturnToTheVersionTheyCameFrom(long seed) {
        ShopFolder shop = new DirtyShop(folder, seed).shop();
        Reconciled before = shop.reconciled();
        List<SetAsideRow> older = rows(before, Table.PRICE_BOOK).stream()
                .filter(row -> row.file().equals("price-book/2026-01-01.csv"))
                .toList();
        assertThat(older).as("seed %d", seed).isNotEmpty();
        putBack(shop, OTHERS.get(OTHERS.size() - 1), "-corrected", older, "");

        List<Integer> types = typesByVersion(before.ledger());
        assertThat(typesByVersion(shop.reconciled().ledger()))
                .as("seed %d", seed)
                .containsExactly(types.get(0) + older.size(), types.get(1));
    }

    private static List<Integer> typesByVersion(Ledger ledger) {
        return ledger.books().versions().stream()
                .map(book -> book.types().size())
                .toList();
    }

    private static void putBack(
            ShopFolder shop, Corrected corrected, String name, List<SetAsideRow> aside, String ticket) {
        List<String> lines = new ArrayList<>();
        lines.add("source_file,source_line,source_digest,reasons," + corrected.header());
        for (SetAsideRow row : aside) {
            String cells = corrected
                    .cells()
                    .replace("KEY", "C" + lines.size())
                    .replace("TICKET", ticket)
                    .replace(
                            "DAY",
                            LocalDate.of(2025, 1, 1).plusDays(lines.size()).toString());
            lines.add(row.file() + "," + row.line() + "," + row.digest() + ",," + cells);
        }
        shop.file("exports/" + corrected.table().title() + name + ".csv", lines.toArray(String[]::new));
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void rowsOfAShopInDialectsPutBackUncorrectedAreSetAsideOnceMore(long seed) throws IOException {
        Path plain = folder.resolve("plain");
        new DirtyShop(plain, seed, 40);
        InAnyDialect.write(plain, folder, seed);
        putBackUncorrected(seed);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void rowsPutBackUncorrectedAreSetAsideOnceMoreAndNothingElseChanges(long seed) throws IOException {
        new DirtyShop(folder, seed);
        putBackUncorrected(seed);
    }

    private Reconciled reconciled() {
        return new Reconcile()
                .reconcile(new ReadExports().read(folder, Settings.DEFAULTS), Settings.DEFAULTS, ShopFolder.AS_OF);
    }

    private void putBackUncorrected(long seed) throws IOException {
        Reconciled before;
        try {
            before = reconciled();
        } catch (Refusal open) {
            assertThat(open.getMessage()).contains("if the day stands first");
            return;
        }
        Path out = folder.resolve("written");
        new WriteSetAside().write(before.setAside(), out);
        for (Table table : before.setAside().tables()) {
            Files.copy(
                    out.resolve(table.title() + ".csv"), folder.resolve("exports/" + table.title() + "-put-back.csv"));
        }
        Reconciled after = reconciled();
        assertThat(seconds(after)).isEqualTo(seconds(before));
        for (Table table : Table.values()) {
            List<String> reasons = reasons(before, table);
            assertThat(reasons(after, table)).as("seed %d, %s", seed, table).isEqualTo(reasons);
        }
        assertThat(after.balances()).allMatch(Balance::holds);
    }

    /** What is wrong with each row, less what can only be said of the file the row first stood in. */
    private static List<String> reasons(Reconciled result, Table table) {
        return rows(result, table).stream()
                .filter(row -> row.texts().stream().anyMatch(text -> !text.isEmpty()))
                .map(row -> row.texts() + " " + row.reasons())
                .sorted()
                .collect(Collectors.toList());
    }

    private static List<SetAsideRow> rows(Reconciled result, Table table) {
        List<SetAsideRow> rows = new ArrayList<>();
        result.setAside().forEach(table, rows::add);
        return rows;
    }

    private static List<String> corrected(List<SetAsideRow> aside, String ticket) {
        List<String> lines = new ArrayList<>();
        for (SetAsideRow row : aside) {
            lines.add(row.file() + "," + row.line() + "," + row.digest() + ",,C" + lines.size() + ",\"" + ticket
                    + "\",Ada,2026-10-20,1,bench");
        }
        return lines;
    }

    private static void putBack(ShopFolder shop, String name, List<String> lines) {
        List<String> all = new ArrayList<>();
        all.add("source_file,source_line,source_digest,reasons,entry,ticket,technician,work_date,hours,kind");
        all.addAll(lines);
        shop.file("exports/" + name + ".csv", all.toArray(String[]::new));
    }

    private static long seconds(Reconciled result) {
        TimeEntries time = result.ledger().time();
        return LongStream.range(0, time.size())
                .map(entry -> time.seconds((int) entry))
                .sum();
    }

    private static long rowsOf(Reconciled result, String table, String fate) {
        String folder = table.equals("price-book") ? "price-book/" : "exports/" + table;
        return result.balances().stream()
                .filter(balance -> balance.name().startsWith("rows of " + folder))
                .flatMap(balance -> balance.terms().stream())
                .filter(term -> term.name().equals(fate))
                .mapToLong(Balance.Term::amount)
                .sum();
    }
}
