package benchtrue.findings;

import benchtrue.shop.Absent;
import benchtrue.shop.TimeEntries;

/** How finely each technician logs: the coarsest step that nine of ten of their entries are a multiple of. */
final class RoundingGrid {
    private static final int[] STEPS = {3_600, 1_800, 900, 720, 600, 360, 300, 180, 60, 36, 1};
    private static final double NEARLY_ALL = 0.9;
    private static final int MINUTE = 60;

    private final int[] step;

    private RoundingGrid(int[] step) {
        this.step = step;
    }

    /** Returns the grids of a shop's technicians. */
    static RoundingGrid of(TimeEntries time, int technicians) {
        int[][] fitting = new int[technicians][STEPS.length];
        int[] entries = new int[technicians];
        for (int entry = 0; entry < time.size(); entry++) {
            int technician = time.technician(entry);
            long seconds = time.seconds(entry);
            entries[technician]++;
            for (int i = 0; i < STEPS.length; i++) {
                fitting[technician][i] += seconds % STEPS[i] == 0 ? 1 : 0;
            }
        }
        int[] step = new int[technicians];
        for (int technician = 0; technician < technicians; technician++) {
            int i = 0;
            while (fitting[technician][i] < NEARLY_ALL * entries[technician]) {
                i++;
            }
            step[technician] = STEPS[i];
        }
        return new RoundingGrid(step);
    }

    /**
     * Returns how wide a stretch of true time is logged to the same minute as a quote; 0 where the technician's steps never
     * land on it.
     */
    double window(int technician, long quotedSeconds) {
        int grid = technician == Absent.INDEX ? 1 : step[technician];
        long upTo = Math.floorDiv(quotedSeconds + MINUTE - 1, (long) grid);
        long below = Math.floorDiv(quotedSeconds - MINUTE, (long) grid);
        return (double) (upTo - below) * grid;
    }
}
