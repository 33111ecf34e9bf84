package benchtrue.statistics;

/** Ten invented jobs in bench hours, for checks against R where no published data fit. */
final class BenchHours {
    static final double[] JOBS = {2.1, 3.4, 2.8, 5.0, 4.2, 3.9, 2.6, 7.5, 3.1, 4.4};
    static final double[] SORTED = Quantile.sorted(JOBS);

    private BenchHours() {}
}
