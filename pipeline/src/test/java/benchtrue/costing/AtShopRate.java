package benchtrue.costing;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import java.util.Arrays;
import java.util.List;

/** Job lines under a posted rate, with no money recorded for any of them. */
public final class AtShopRate {
    private AtShopRate() {}

    public static CostedLines of(JobLines jobs, long shopRate) {
        long[] absent = new long[jobs.size()];
        Arrays.fill(absent, Absent.AMOUNT);
        return new CostedLines(
                jobs, new CostedLines.LineMoney(absent, absent, absent, absent, absent), shopRate, List.of());
    }
}
