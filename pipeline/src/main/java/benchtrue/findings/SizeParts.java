package benchtrue.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Cuts jobs by the size of their quotes. Few large quotes hold many hours, so that a part's weight is the mean of its share of
 * the jobs and of its share of the quoted hours.
 */
final class SizeParts {
    private static final int MOST = 8;
    private static final int FEWEST_JOBS = 8;
    private static final double SAME = 1e-9;

    private SizeParts() {}

    /**
     * Some jobs in a row.
     *
     * @param from place of the first
     * @param to place after the last
     * @param weight its part of the whole
     */
    record Part(int from, int to, double weight) {
        int jobs() {
            return to - from;
        }
    }

    /**
     * Returns at most {@value #MOST} parts of about one weight, never cut between equal quotes.
     *
     * @param logQuotes logarithms of quoted hours, ascending
     */
    static List<Part> of(double[] logQuotes) {
        double hours = Arrays.stream(logQuotes).map(StrictMath::exp).sum();
        List<Part> parts = new ArrayList<>();
        int from = 0;
        double weight = 0;
        for (int to = 1; to <= logQuotes.length; to++) {
            weight += 0.5 / logQuotes.length + 0.5 * StrictMath.exp(logQuotes[to - 1]) / hours;
            boolean last = to == logQuotes.length;
            boolean apart = !last && logQuotes[to] > logQuotes[to - 1] + SAME;
            boolean enough = weight >= 1.0 / MOST && to - from >= FEWEST_JOBS && logQuotes.length - to >= FEWEST_JOBS;
            if (last || (apart && enough)) {
                parts.add(new Part(from, to, weight));
                from = to;
                weight = 0;
            }
        }
        return parts;
    }

    /** Returns how many jobs lie below the cut that sets the loads of small and large quotes furthest apart. */
    static int cut(List<Part> parts, double[] loads) {
        double centre = 0;
        for (int place = 0; place < loads.length; place++) {
            centre += parts.get(place).weight * loads[place];
        }
        double below = 0;
        double sum = 0;
        double furthest = -1;
        int cut = parts.get(0).to;
        for (int place = 0; place < loads.length - 1; place++) {
            below += parts.get(place).weight;
            sum += parts.get(place).weight * (loads[place] - centre);
            double between = sum * sum / below / (1 - below);
            cut = between > furthest ? parts.get(place).to : cut;
            furthest = StrictMath.max(between, furthest);
        }
        return cut;
    }
}
