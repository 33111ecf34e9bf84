package benchtrue.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the files of a tidy shop say, read back and added up again. */
final class SampleShopTest {
    @TempDir
    static Path folder;

    private static Path shop;
    private static Truth truth;

    @BeforeAll
    static void write() throws IOException {
        shop = folder.resolve("shop");
        truth = WriteSample.write(SampleOptions.standard(shop).with(Tidiness.TIDY));
    }

    private static double hours(CSVRecord row) {
        return new BigDecimal(row.get("hours")).doubleValue();
    }

    private static boolean isBench(CSVRecord row) {
        return row.get("kind").isEmpty();
    }

    @Test
    void theTruthOfEveryTicketAddsUpToItsLog() throws IOException {
        Map<String, Set<String>> quoted = Exports.table(shop, "quoted-lines").stream()
                .collect(Collectors.groupingBy(
                        row -> row.get("ticket"),
                        Collectors.mapping(row -> row.get("repair_type"), Collectors.toSet())));
        Map<String, Double> logged = new TreeMap<>();
        for (CSVRecord row : Exports.table(shop, "time-log")) {
            String type = row.get("repair_type");
            if (isBench(row) && (type.isEmpty() || quoted.get(row.get("ticket")).contains(type))) {
                logged.merge(row.get("ticket"), hours(row), Double::sum);
            }
        }
        Map<String, Double> known = new TreeMap<>();
        for (CSVRecord row : Exports.rows(shop.resolve("truth-lines.csv"))) {
            known.merge(row.get("ticket"), Double.parseDouble(row.get("logged_hours")), Double::sum);
        }
        known.forEach((ticket, hours) ->
                assertThat(logged.getOrDefault(ticket, 0.0)).as(ticket).isCloseTo(hours, within(0.001)));
    }

    @Test
    void labelledHoursAreThoseOfTheirLine() throws IOException {
        Map<String, Double> logged = new HashMap<>();
        for (CSVRecord row : Exports.table(shop, "time-log")) {
            if (!row.get("line").isEmpty()) {
                logged.merge(row.get("ticket") + "/" + row.get("line"), hours(row), Double::sum);
            }
        }
        int checked = 0;
        for (CSVRecord row : Exports.rows(shop.resolve("truth-lines.csv"))) {
            Double labelled = logged.get(row.get("ticket") + "/" + row.get("line"));
            if (labelled != null) {
                assertThat(labelled).isCloseTo(Double.parseDouble(row.get("logged_hours")), within(0.001));
                checked++;
            }
        }
        assertThat(checked).isGreaterThan(500);
    }

    @Test
    void realisedFactorsAreWhatTheFilesGive() throws IOException {
        Map<String, CSVRecord> quotes = Exports.table(shop, "quoted-lines").stream()
                .collect(Collectors.toMap(row -> row.get("ticket") + "/" + row.get("line"), row -> row));
        Map<String, String> status = Exports.table(shop, "tickets").stream()
                .collect(Collectors.toMap(row -> row.get("ticket"), row -> row.get("status")));
        Map<String, double[]> sums = new TreeMap<>();
        for (CSVRecord row : Exports.rows(shop.resolve("truth-lines.csv"))) {
            CSVRecord quote = quotes.get(row.get("ticket") + "/" + row.get("line"));
            boolean right = !quote.get("return_reason").isEmpty()
                    && !quote.get("return_reason").equals("new-damage");
            boolean judged = quote.get("outcome").isEmpty()
                    && status.get(row.get("ticket")).equals("closed")
                    && !right;
            assertThat(row.get("judged")).as(row.toString()).isEqualTo(judged ? "yes" : "no");
            if (judged) {
                double[] sum = sums.computeIfAbsent(row.get("repair_type"), key -> new double[3]);
                sum[0] += Double.parseDouble(row.get("logged_hours"));
                sum[1] += Double.parseDouble(quote.get("quoted_hours"));
                sum[2]++;
            }
        }
        sums.forEach((type, sum) -> {
            assertThat(truth.type(type).realisedFactor()).as(type).isCloseTo(sum[0] / sum[1], within(1e-4));
            assertThat(truth.type(type).lines()).as(type).isEqualTo((int) sum[2]);
        });
        assertThat(sums).hasSize(truth.types().size());
    }

    @Test
    void nobodyWorksMoreThanEightHoursADayOrOnASunday() throws IOException {
        Map<String, Double> days = new HashMap<>();
        for (CSVRecord row : Exports.table(shop, "time-log")) {
            LocalDate date = LocalDate.parse(row.get("work_date"));
            assertThat(date.getDayOfWeek()).isNotIn(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);
            days.merge(row.get("technician") + date, hours(row), Double::sum);
        }
        assertThat(days.values()).allSatisfy(hours -> assertThat(hours).isLessThanOrEqualTo(8.0001));
    }

    @Test
    void workIsDoneWhileTheInstrumentIsIn() throws IOException {
        Map<String, CSVRecord> tickets =
                Exports.table(shop, "tickets").stream().collect(Collectors.toMap(row -> row.get("ticket"), row -> row));
        for (CSVRecord row : Exports.table(shop, "time-log")) {
            CSVRecord ticket = tickets.get(row.get("ticket"));
            if (ticket != null) {
                assertThat(row.get("work_date")).isGreaterThanOrEqualTo(ticket.get("opened"));
                String closed = ticket.get("closed");
                assertThat(closed.isEmpty() || closed.compareTo(row.get("work_date")) >= 0)
                        .as(row.toString())
                        .isTrue();
            }
        }
    }

    @Test
    void moreTimeIsPaidThanLogged() throws IOException {
        Map<String, Double> logged = new TreeMap<>();
        for (CSVRecord row : Exports.table(shop, "time-log")) {
            logged.merge(row.get("technician") + row.get("work_date").substring(0, 7), hours(row), Double::sum);
        }
        double paidInAll = 0;
        for (CSVRecord row : Exports.table(shop, "paid-hours")) {
            double paid = hours(row);
            paidInAll += paid;
            double here = logged.getOrDefault(row.get("technician") + row.get("month"), 0.0);
            assertThat(paid).as(row.toString()).isGreaterThanOrEqualTo(here);
        }
        double loggedInAll =
                logged.values().stream().mapToDouble(Double::doubleValue).sum();
        assertThat(loggedInAll / paidInAll).isBetween(0.80, 0.92);
    }

    @Test
    void aRefretOnABoundBoardTakesTenToSixteenHoursAndASetupOneToTwo() {
        List<LineTruth> refrets = truth.lines().stream()
                .filter(line -> line.repairType().equals("refret-bound") && line.judged())
                .toList();
        List<LineTruth> setups = truth.lines().stream()
                .filter(line -> line.repairType().equals("full-setup") && line.judged())
                .toList();
        assertThat(share(refrets, 10, 16)).isGreaterThan(0.6);
        assertThat(share(setups, 1, 2)).isGreaterThan(0.75);
    }

    private static double share(List<LineTruth> lines, double least, double most) {
        return lines.stream()
                        .filter(line -> line.workedSeconds() >= least * 3_600 && line.workedSeconds() <= most * 3_600)
                        .count()
                / (double) lines.size();
    }

    @Test
    void threeInFiveTicketsWithSeveralLinesAreLoggedWhole() throws IOException {
        Map<String, Integer> lines = new HashMap<>();
        for (LineTruth line : truth.lines()) {
            if (line.loggedSeconds() > 0) {
                lines.merge(line.ticket(), 1, Integer::sum);
            }
        }
        Set<String> labelled = new HashSet<>();
        for (CSVRecord row : Exports.table(shop, "time-log")) {
            if (!row.get("line").isEmpty() || !row.get("repair_type").isEmpty()) {
                labelled.add(row.get("ticket"));
            }
        }
        List<String> several =
                lines.keySet().stream().filter(ticket -> lines.get(ticket) > 1).toList();
        double whole =
                several.stream().filter(ticket -> !labelled.contains(ticket)).count() / (double) several.size();
        assertThat(whole).isBetween(0.52, 0.68);
    }

    @Test
    void mostRepairTypesHaveEnoughLines() {
        assertThat(truth.types().stream().filter(type -> type.lines() >= 20))
                .hasSizeGreaterThan(truth.types().size() * 9 / 10);
    }

    @Test
    void aWeekAtTheBenchStaysBelowFortyFiveHours() throws IOException {
        Map<String, Double> weeks = new HashMap<>();
        for (CSVRecord row : Exports.table(shop, "time-log")) {
            LocalDate monday =
                    LocalDate.parse(row.get("work_date")).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
            weeks.merge(row.get("technician") + monday, hours(row), Double::sum);
        }
        assertThat(weeks.values()).allSatisfy(hours -> assertThat(hours).isLessThan(45));
    }
}
