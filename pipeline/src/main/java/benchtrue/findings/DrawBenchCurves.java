package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.shop.Ints;
import benchtrue.statistics.KaplanMeier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Follows the jobs of each repair type that has open ones until they leave the bench. */
final class DrawBenchCurves {
    /** Finished jobs below which a curve has too few steps to be read. */
    private static final int ENOUGH_FINISHED = 8;

    private final JobLines jobs;
    private final Ints[] finished;
    private final Ints[] open;

    private DrawBenchCurves(JobLines jobs, int[] finished, int[] open) {
        this.jobs = jobs;
        this.finished = byType(finished);
        this.open = byType(open);
    }

    /**
     * Returns one curve a repair type with an open job that counts and finished ones enough, those that open jobs change
     * most first.
     *
     * @param finished rows of finished jobs whose hours are their own and not copied from the quote
     * @param open rows of the open jobs that count
     * @param usual by repair type
     */
    static List<BenchCurve> of(JobLines jobs, int[] finished, int[] open, List<UsualJob> usual) {
        DrawBenchCurves curves = new DrawBenchCurves(jobs, finished, open);
        List<BenchCurve> found = new ArrayList<>();
        for (UsualJob job : usual) {
            if (job.openUsed() > 0 && job.jobs() >= ENOUGH_FINISHED) {
                found.add(curves.curve(job));
            }
        }
        found.sort(Comparator.comparingDouble(DrawBenchCurves::change).reversed());
        return found;
    }

    private static double change(BenchCurve curve) {
        return StrictMath.abs(
                StrictMath.log(curve.usual().typical() / curve.usual().withoutOpen()));
    }

    private BenchCurve curve(UsualJob usual) {
        double[] done = ratios(finished[usual.repairType()]);
        double[] soFar = ratios(open[usual.repairType()]);
        double[] all = Arrays.copyOf(done, done.length + soFar.length);
        System.arraycopy(soFar, 0, all, done.length, soFar.length);
        boolean[] left = new boolean[all.length];
        Arrays.fill(left, 0, done.length, true);
        boolean[] every = new boolean[done.length];
        Arrays.fill(every, true);
        return new BenchCurve(usual, KaplanMeier.of(all, left), KaplanMeier.of(done, every), soFar);
    }

    private double[] ratios(Ints lines) {
        return Arrays.stream(lines.toArray())
                .mapToDouble(line -> StrictMath.exp(JobRows.logRatio(jobs, line)))
                .sorted()
                .toArray();
    }

    private Ints[] byType(int[] lines) {
        Ints[] rows = new Ints[jobs.ledger().repairTypes().size()];
        Arrays.setAll(rows, type -> new Ints());
        for (int line : lines) {
            rows[jobs.ledger().lines().repairType(line)].add(line);
        }
        return rows;
    }
}
