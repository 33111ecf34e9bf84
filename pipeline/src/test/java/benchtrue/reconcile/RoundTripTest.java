package benchtrue.reconcile;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopFolder;
import benchtrue.intake.Table;
import benchtrue.shop.Balance;
import benchtrue.shop.TimeEntries;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

    @ParameterizedTest
    @MethodSource("seeds")
    void rowsPutBackUncorrectedAreSetAsideOnceMoreAndNothingElseChanges(long seed) throws IOException {
        ShopFolder shop = new DirtyShop(folder, seed).shop();
        Reconciled before = shop.reconciled();
        Path out = folder.resolve("written");
        new WriteSetAside().write(before.setAside(), out);
        for (Table table : before.setAside().tables()) {
            Files.copy(
                    out.resolve(table.title() + ".csv"), folder.resolve("exports/" + table.title() + "-put-back.csv"));
        }
        Reconciled after = shop.reconciled();
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
        return result.balances().stream()
                .filter(balance -> balance.name().startsWith("rows of exports/" + table))
                .flatMap(balance -> balance.terms().stream())
                .filter(term -> term.name().equals(fate))
                .mapToLong(Balance.Term::amount)
                .sum();
    }
}
