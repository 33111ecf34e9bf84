package benchtrue.breakdown;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import java.util.Arrays;
import java.util.function.DoubleToLongFunction;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** The figures of some jobs. Hours are summed as whole seconds and money as ten-thousandths, so sums are exact. */
final class JobSums {
    private final JobColumns columns;
    private final int[] rows;

    /** Takes rows of the jobs, in their order, so that a ticket's lines stand together. */
    JobSums(JobColumns columns, int[] rows) {
        this.columns = columns;
        this.rows = rows;
    }

    static JobSums all(JobColumns columns) {
        return new JobSums(columns, IntStream.range(0, columns.rows()).toArray());
    }

    /** A table has hours to four decimals, a third of a second: the second that was meant is the nearest. */
    static long seconds(double hours) {
        return Math.round(hours * Hours.SECONDS);
    }

    private static long tenThousandths(double amount) {
        return Math.round(amount * Money.UNIT);
    }

    int size() {
        return rows.length;
    }

    IntStream rows() {
        return IntStream.of(rows);
    }

    Figure figure(Measure measure) {
        return switch (measure) {
            case JOBS -> Figure.of(Figure.Form.COUNT, rows.length);
            case QUOTED -> hours("quoted_hours");
            case TAKEN -> hours("actual_hours");
            case REWORK -> hours("rework_hours");
            case EACH -> each();
            case LOAD ->
                Figure.of(Figure.Form.RATIO, Load.of(columns, counted()).ratio());
            case RANGE -> LoadRange.of(columns, counted());
            case LABOUR -> amount("labour_revenue");
            case PARTS -> amount("parts_revenue");
            case COST -> cost();
            case MARGIN -> amount("margin");
            case RATE -> rate();
            case DAYS -> average("days_in_shop");
            case WAITED -> average("days_waited");
        };
    }

    Figure hours(String column) {
        return Figure.of(Figure.Form.HOURS, sum(column, JobSums::seconds));
    }

    Figure amount(String column) {
        return Figure.of(Figure.Form.MONEY, sum(column, JobSums::tenThousandths));
    }

    /** Returns the sum over jobs of which it is known; absent where of none. */
    private long sum(String column, DoubleToLongFunction exact) {
        double[] values = columns.numbers(column);
        long sum = Absent.AMOUNT;
        for (int row : rows) {
            if (!Double.isNaN(values[row])) {
                sum = Math.addExact(Absent.firstOf(sum, 0), exact.applyAsLong(values[row]));
            }
        }
        return sum;
    }

    private Figure cost() {
        long cost = Absent.AMOUNT;
        for (String column : Measure.COST.columns()) {
            long part = sum(column, JobSums::tenThousandths);
            cost = Absent.has(part) ? Math.addExact(Absent.firstOf(cost, 0), part) : cost;
        }
        return Figure.of(Figure.Form.MONEY, cost);
    }

    private Figure each() {
        JobSums counted = counted();
        long seconds = counted.sum("actual_hours", JobSums::seconds);
        return Figure.of(
                Figure.Form.HOURS, counted.size() == 0 ? Absent.AMOUNT : Math.round((double) seconds / counted.size()));
    }

    private Figure rate() {
        double[] hours = columns.numbers("actual_hours");
        double[] labour = columns.numbers("labour_revenue");
        JobSums paid = where(row -> hours[row] > 0 && !Double.isNaN(labour[row]));
        long seconds = Absent.firstOf(paid.sum("actual_hours", JobSums::seconds), 0);
        long charged = Absent.firstOf(paid.sum("labour_revenue", JobSums::tenThousandths), 0);
        return Figure.of(
                Figure.Form.RATE,
                seconds == 0 ? Absent.AMOUNT : Math.round(charged * (double) Hours.SECONDS / seconds));
    }

    private Figure average(String column) {
        double[] days = columns.numbers(column);
        return Figure.of(
                Figure.Form.DAYS,
                Arrays.stream(rows)
                        .mapToDouble(row -> days[row])
                        .filter(known -> !Double.isNaN(known))
                        .average()
                        .orElse(Double.NaN));
    }

    JobSums where(IntPredicate which) {
        return new JobSums(columns, rows().filter(which).toArray());
    }

    /** Returns those of the jobs that count in the findings. */
    JobSums counted() {
        boolean[] counted = columns.are("counted", "yes");
        return where(row -> counted[row]);
    }

    /** Returns how many of the jobs have hours copied from the quote. */
    int copied() {
        boolean[] copied = columns.are("copied", "yes");
        return (int) rows().filter(row -> copied[row]).count();
    }

    /** Returns of how many jobs a figure is not known. */
    int unknown(String column) {
        double[] values = columns.numbers(column);
        return (int) rows().filter(row -> Double.isNaN(values[row])).count();
    }
}
