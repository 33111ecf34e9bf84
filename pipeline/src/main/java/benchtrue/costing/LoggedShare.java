package benchtrue.costing;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import java.util.List;

/**
 * How much paid time reached the log in the months that the bench hour is reckoned over.
 *
 * @param paidSeconds hours paid, absent where not recorded
 * @param loggedSeconds hours logged by those who were paid, absent where not recorded
 * @param least share below which every repair looks cheaper than it is
 */
public record LoggedShare(long paidSeconds, long loggedSeconds, double least) {
    static LoggedShare of(List<WorkMonth> work, int from, int to, double least) {
        long paid = Absent.AMOUNT;
        long logged = Absent.AMOUNT;
        for (WorkMonth month : work) {
            if (month.month() >= from && month.month() <= to && Absent.has(month.paidSeconds())) {
                paid = Absent.firstOf(paid, 0) + month.paidSeconds();
                logged = Absent.firstOf(logged, 0) + month.loggedOfPaidSeconds();
            }
        }
        return new LoggedShare(paid, logged, least);
    }

    /** Returns the share of paid time that reached the log, NaN where not recorded. */
    public double share() {
        return Absent.has(paidSeconds) && paidSeconds > 0
                ? Hours.of(loggedSeconds) / Hours.of(paidSeconds)
                : Double.NaN;
    }

    /** Returns whether the review must open with it. */
    public boolean opensTheReview() {
        return share() < least;
    }
}
