package benchtrue.sample;

/**
 * One invented technician.
 *
 * @param name name in the exports
 * @param grade trainee, technician or senior
 * @param effect what the technician multiplies bench hours by
 * @param wageCents wage an hour at the start
 * @param grid seconds that logged time is a multiple of
 * @param style how time is written down
 * @param copies whether quotes are sometimes copied into the log
 * @param payBasis how the technician is paid
 */
record Technician(
        String name,
        String grade,
        double effect,
        int wageCents,
        int grid,
        LogStyle style,
        boolean copies,
        String payBasis) {
    private static final int QUARTER_HOUR = 900;
    private static final int COARSE_FROM = 7_200;
    private static final int FINER = 180;

    /** Returns the grid for a job of some length: nobody rounds a short job to quarter hours. */
    int grid(double seconds) {
        return grid == QUARTER_HOUR && seconds < COARSE_FROM ? FINER : grid;
    }
}
