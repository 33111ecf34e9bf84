package benchtrue.costing;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import java.util.List;

/**
 * How much paid time reached the log, and how much of it was sold, in the months that the bench hour is reckoned over.
 *
 * @param paidSeconds hours paid, absent where not recorded
 * @param loggedSeconds hours logged by those who were paid, absent where not recorded
 * @param soldSeconds hours on jobs that somebody pays for, in the months whose paid hours are recorded; else absent
 * @param least share below which every repair looks cheaper than it is
 */
public record LoggedShare(long paidSeconds, long loggedSeconds, long soldSeconds, double least) {
    static LoggedShare of(List<WorkMonth> work, int from, int to, double least) {
        long paid = Absent.AMOUNT;
        long logged = Absent.AMOUNT;
        long sold = Absent.AMOUNT;
        for (WorkMonth month : work) {
            if (month.month() >= from && month.month() <= to && Absent.has(month.paidSeconds())) {
                paid = Absent.firstOf(paid, 0) + month.paidSeconds();
                logged = Absent.firstOf(logged, 0) + month.loggedOfPaidSeconds();
                sold = Absent.firstOf(sold, 0) + month.seconds(WorkKind.SOLD);
            }
        }
        return new LoggedShare(paid, logged, sold, least);
    }

    /** Returns the share of paid time that reached the log, NaN where not recorded. */
    public double share() {
        return ofPaid(loggedSeconds);
    }

    /** Returns the share of paid hours sold, NaN where not recorded. */
    public double soldShare() {
        return ofPaid(soldSeconds);
    }

    private double ofPaid(long seconds) {
        return Absent.has(paidSeconds) && paidSeconds > 0 ? Hours.of(seconds) / Hours.of(paidSeconds) : Double.NaN;
    }

    /** Returns whether the review must open with it. */
    public boolean opensTheReview() {
        return share() < least;
    }
}
