package benchtrue.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.hours.JobLines;
import benchtrue.hours.SplitHours;
import benchtrue.intake.ReadExports;
import benchtrue.intake.columns.Table;
import benchtrue.reconcile.Reconcile;
import benchtrue.reconcile.Reconciled;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import benchtrue.shop.Balance;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.LineState;
import benchtrue.shop.Notice;
import benchtrue.shop.QuotedLines;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the pipeline makes of an invented shop is what was put into it. */
final class SampleMeetsPipelineTest {
    @TempDir
    Path folder;

    private Settings settings;

    private Reconciled reconciled() {
        settings = new ReadSettings().read(folder);
        return new Reconcile().reconcile(new ReadExports().read(folder, settings), settings, History.AS_OF);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 7})
    void everyRowThatWasPlantedIsFound(long seed) throws IOException {
        Map<String, Long> planted =
                WriteSample.write(SampleOptions.standard(folder).withSeed(seed)).planted();
        Reconciled found = reconciled();

        assertThat(found.setAside().count(Table.TICKETS))
                .isEqualTo(planted.get("unreadable-opened") + planted.get("missing-ticket-key"));
        assertThat(found.setAside().count(Table.QUOTED_LINES))
                .isEqualTo(planted.get("missing-line-key")
                        + planted.get("unreadable-quote")
                        + planted.get("unknown-repair-type")
                        + planted.get("line-of-unknown-ticket"));
        assertThat(found.setAside().count(Table.TIME_LOG))
                .isEqualTo(planted.get("unreadable-date")
                        + planted.get("unreadable-hours")
                        + planted.get("missing-technician")
                        + planted.get("unknown-ticket")
                        + planted.get("near-miss-ticket")
                        + planted.get("negative-hours")
                        + planted.get("end-before-start")
                        + planted.get("over-24-hours"));
        assertThat(found.setAside().count(Table.PARTS_USAGE))
                .isEqualTo(planted.get("unreadable-cost") + planted.get("part-of-unknown-ticket"));
        assertThat(found.setAside().count(Table.WAITS)).isEqualTo(planted.get("wait-ends-before-start"));

        for (String table : new String[] {"tickets", "quoted-lines", "time-log"}) {
            for (String fate : new String[] {"repeated", "superseded"}) {
                assertThat(rows(found, table, fate))
                        .as(fate + " " + table)
                        .isEqualTo(planted.getOrDefault(fate + " " + table, 0L));
            }
        }
        Map<String, Long> notices =
                found.notices().stream().collect(Collectors.toMap(Notice::code, Notice::count, Long::sum));
        assertThat(notices)
                .containsEntry("after-as-of", planted.get("future-date"))
                .containsEntry("cancelled-pair", planted.get("cancelled-pair"))
                .containsEntry("clock-times-overlap", 2 * planted.get("overlapping-clocks"))
                .containsEntry("day-over-24-hours", planted.get("day-over-24-hours"))
                .containsEntry("no-wage", planted.get("no-wage"))
                .containsEntry("outlying-quantity", planted.get("outlying-quantity"))
                .containsEntry("zero-cost-part", planted.get("zero-cost-part"))
                .containsEntry("time-after-close", planted.get("after-close"))
                .containsEntry("time-before-opening", planted.get("before-opened"))
                .containsEntry("unknown-line", planted.get("unknown-line"))
                .containsKey("quoted-before-first-book");
        assertThat(lostInRounding(found)).as("0.3335 h is 1,200.6 s").isNotZero();
        assertThat(notices.get("hours-equal-quote")).isGreaterThanOrEqualTo(planted.get("copied quote"));
    }

    private static long lostInRounding(Reconciled found) {
        return found.balances().stream()
                .filter(balance -> balance.name().equals("hours"))
                .flatMap(balance -> balance.terms().stream())
                .filter(term -> term.name().equals("lost in rounding"))
                .mapToLong(Balance.Term::amount)
                .sum();
    }

    private static long rows(Reconciled found, String table, String fate) {
        return found.balances().stream()
                .filter(balance -> balance.name().startsWith("rows of exports/" + table))
                .flatMap(balance -> balance.terms().stream())
                .filter(term -> term.name().equals(fate))
                .mapToLong(Balance.Term::amount)
                .sum();
    }

    @ParameterizedTest
    @CsvSource({"1, TIDY", "2, TIDY", "1, UNTIDY", "2, UNTIDY", "3, UNTIDY"})
    void whereEveryLineIsLabelledThePipelinesHoursAreTheTrueOnes(long seed, Tidiness tidiness) throws IOException {
        Truth truth = WriteSample.write(
                SampleOptions.standard(folder).withSeed(seed).with(tidiness).withWholeTicketShare(0));
        JobLines lines = new SplitHours().split(reconciled().ledger(), settings);
        Map<String, LineTruth> known = truth.lines().stream()
                .collect(Collectors.toMap(line -> line.ticket() + "/" + line.line(), line -> line));
        assertThat(lines.size()).isEqualTo(known.size());
        QuotedLines quoted = lines.ledger().lines();
        Set<String> shared = sharedTickets();
        for (int i = 0; i < lines.size(); i++) {
            String ticket = lines.ledger().tickets().get(quoted.get(i).ticket()).ticket();
            LineTruth line = known.get(ticket + "/" + quoted.get(i).line());
            assertThat(lines.state(i).name()).isEqualToIgnoringCase(line.state());
            if (!shared.contains(ticket) && lines.state(i) != LineState.VOID) {
                assertThat(lines.actualSeconds(i)).as(line.toString()).isEqualTo(line.loggedSeconds());
            }
            if (quoted.get(i).chargeKind() != ChargeKind.PACKAGE) {
                assertThat(lines.judged(i)).as(line.toString()).isEqualTo(line.judged());
            }
            if (line.judged()) {
                assertThat(lines.todayQuotedHours(i)).isCloseTo(line.rebasedSeconds() / 3_600, within(1e-9));
            }
        }
    }

    /** Tickets with a session that several share: there the records alone can't tell. */
    private Set<String> sharedTickets() throws IOException {
        return Exports.table(folder, "time-log").stream()
                .map(row -> row.get("ticket"))
                .filter(tickets -> tickets.contains(";"))
                .flatMap(tickets -> Arrays.stream(tickets.split(";")))
                .collect(Collectors.toSet());
    }
}
