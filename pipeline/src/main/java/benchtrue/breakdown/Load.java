package benchtrue.breakdown;

import benchtrue.shop.Hours;
import benchtrue.statistics.Jackknife;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Hours taken, putting right included, over hours quoted against today's book.
 *
 * @param taken hours by visit
 * @param quoted hours by visit
 * @param ratio of the sums; NaN without a quote
 */
record Load(double[] taken, double[] quoted, double ratio) {
    /** Returns the load of some jobs. */
    static Load of(JobColumns columns, JobSums jobs) {
        double[] actual = columns.numbers("actual_hours");
        double[] rework = columns.numbers("rework_hours");
        double[] today = columns.numbers("quoted_hours_today");
        int[] visits = columns.visits();
        int[] rows = jobs.rows().toArray();
        double[] taken = new double[rows.length];
        double[] quoted = new double[rows.length];
        double[] sums = new double[2];
        int place = -1;
        for (int i = 0; i < rows.length; i++) {
            int row = rows[i];
            place += i == 0 || visits[row] != visits[rows[i - 1]] ? 1 : 0;
            double hours = Hours.of(JobSums.seconds(actual[row]) + JobSums.seconds(rework[row]));
            taken[place] += hours;
            quoted[place] += today[row];
            sums[0] += hours;
            sums[1] += today[row];
        }
        double ratio = sums[1] > 0 ? sums[0] / sums[1] : Double.NaN;
        return new Load(Arrays.copyOf(taken, place + 1), Arrays.copyOf(quoted, place + 1), ratio);
    }

    /** Returns the load's logarithm with one visit left out at a time. */
    Jackknife jackknife() {
        double allTaken = Arrays.stream(taken).sum();
        double allQuoted = Arrays.stream(quoted).sum();
        return Jackknife.ofLog(
                ratio,
                IntStream.range(0, taken.length)
                        .mapToDouble(visit -> (allTaken - taken[visit]) / (allQuoted - quoted[visit]))
                        .toArray());
    }
}
