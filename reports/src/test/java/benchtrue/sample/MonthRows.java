package benchtrue.sample;

import benchtrue.shop.Hours;
import benchtrue.shop.TimeKind;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;

/** Writes what comes by the month, once all visits are done: shop time, hours paid, overheads; and the wages. */
final class MonthRows {
    private static final double REACHES_LOG = 0.86;
    private static final double RAISE = 1.03;
    private static final double OVERHEAD_AN_HOUR = 22;
    private static final double WEEKS_A_MONTH = 52 / 12.0;

    /** Accounts, their share of the overheads and whether they follow the hours. */
    private record Account(String name, double share, boolean variable) {}

    private static final Account[] ACCOUNTS = {
        new Account("rent", 0.44, false),
        new Account("insurance", 0.10, false),
        new Account("bookkeeping", 0.07, false),
        new Account("front desk", 0.17, false),
        new Account("electricity and heating", 0.09, true),
        new Account("abrasives and glue", 0.08, true),
        new Account("tool upkeep", 0.05, true)
    };

    private final World world;
    private final Bench bench;
    private final Path exports;
    private final YearMonth first;
    private final int months;
    private final long[][] logged;

    MonthRows(World world, Bench bench) {
        this.world = world;
        this.bench = bench;
        this.exports = world.options().folder().resolve("exports");
        this.first = month(world.history().start());
        this.months = place(History.AS_OF) + 1;
        this.logged = new long[world.staff().technicians().size()][months];
    }

    private static YearMonth month(int day) {
        return YearMonth.from(LocalDate.ofEpochDay(day));
    }

    private int place(int day) {
        YearMonth month = month(day);
        return (month.getYear() - first.getYear()) * 12 + month.getMonthValue() - first.getMonthValue();
    }

    void take(Session session) {
        logged[session.technician()][place(session.day())] += session.seconds();
    }

    /** Writes the shop time and the three files. */
    void close(TimeRows time) throws IOException {
        shopTime(time);
        paid();
        overheads();
        wages();
    }

    private void shopTime(TimeRows time) throws IOException {
        for (int person = 0; person < logged.length; person++) {
            for (int month = 0; month < months; month++) {
                Dice dice = dice(person, month);
                int day = StrictMath.max(world.history().start(), (int)
                        first.plusMonths(month).atDay(1 + dice.below(18)).toEpochDay());
                long seconds = (4 + dice.below(9)) * LineMaker.QUARTER_HOUR;
                Bench.Slot slot = bench.take(person, day, seconds);
                if (slot.day() != Bench.NEVER) {
                    Session session = new Session(
                            person, slot.day(), slot.fromSeconds(), seconds, 0, Catalogue.ONE_OFF, TimeKind.SHOP, "");
                    take(session);
                    time.write(session);
                }
            }
        }
    }

    private Dice dice(int person, int month) {
        return new Dice(world.options().seed(), Dice.Stream.MONTH, (long) person * 1_000 + month);
    }

    private void paid() throws IOException {
        Row row = new Row();
        try (CsvFile file = new CsvFile(exports.resolve("paid-hours.csv"), "technician,month,hours")) {
            for (int person = 0; person < logged.length; person++) {
                for (int month = 0; month < months; month++) {
                    double share = REACHES_LOG + 0.03 * dice(person, -1 - month).normal();
                    double paid = logged[person][month] / StrictMath.min(0.97, share);
                    long quarters = StrictMath.round(paid / LineMaker.QUARTER_HOUR);
                    row.text(world.staff().technicians().get(person).name());
                    row.text(first.plusMonths(month).toString());
                    file.write(row.hours(quarters * LineMaker.QUARTER_HOUR).end());
                }
            }
        }
    }

    private void overheads() throws IOException {
        double hours = Hours.of(world.staff().weeklyBenchSeconds())
                * world.staff().technicians().size()
                * WEEKS_A_MONTH;
        Row row = new Row();
        try (CsvFile file = new CsvFile(exports.resolve("overheads.csv"), "month,account,amount,behaviour")) {
            for (int month = 0; month < months; month++) {
                Dice dice = dice(-1, month);
                for (Account account : ACCOUNTS) {
                    double spread = account.variable() ? StrictMath.exp(0.12 * dice.normal()) : 1;
                    double amount = hours * OVERHEAD_AN_HOUR * account.share() * spread;
                    row.text(first.plusMonths(month).toString()).text(account.name());
                    row.cents(StrictMath.round(account.variable() ? amount * 100 : StrictMath.rint(amount) * 100));
                    file.write(
                            row.text(account.variable() ? "variable" : "fixed").end());
                }
            }
        }
    }

    private void wages() throws IOException {
        String header = "technician,hourly_wage,effective_from,weekly_bench_hours,grade,pay_basis";
        int firstYear = first.getYear();
        int lastYear = month(History.AS_OF).getYear();
        Row row = new Row();
        try (CsvFile file = new CsvFile(exports.resolve("technicians.csv"), header)) {
            for (Technician person : world.staff().technicians()) {
                double wage = person.wageCents();
                for (int year = firstYear; year <= lastYear; year++) {
                    row.text(person.name()).cents(StrictMath.round(wage));
                    row.text(year + "-01-01").hours(world.staff().weeklyBenchSeconds());
                    file.write(row.text(person.grade()).text(person.payBasis()).end());
                    wage *= RAISE;
                }
            }
            if (world.options().untidy()) {
                row.text(FaultRows.NO_WAGE_YET).text("20").day(History.AS_OF - 20);
                file.write(row.text("8").text("trainee").text("hourly").end());
            }
        }
    }
}
