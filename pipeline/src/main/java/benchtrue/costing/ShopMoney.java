package benchtrue.costing;

import java.util.List;

/**
 * The shop's money as a whole.
 *
 * @param work months of the bench, by the day worked, oldest first
 * @param earned jobs finished by month, oldest first
 * @param monthBridges why each month's margin differs from the month before, oldest first; empty without a wage list
 * @param yearBridges why it differs from the same month a year before
 * @param lastWholeMonth the newest month that is over on the as-of date
 * @param groups money of the last 365 days by kind of job
 * @param gifts what was given away in the last 365 days and to whom, the largest worth first
 * @param benchHour what a bench hour costs and earns
 * @param loggedShare how much paid time reached the log
 * @param leftOut what is left out because an optional table is missing, one sentence each
 */
public record ShopMoney(
        List<WorkMonth> work,
        List<EarnedMonth> earned,
        List<MarginBridge> monthBridges,
        List<MarginBridge> yearBridges,
        int lastWholeMonth,
        Groups groups,
        List<Gift> gifts,
        BenchHour benchHour,
        LoggedShare loggedShare,
        List<String> leftOut) {
    public ShopMoney {
        work = List.copyOf(work);
        earned = List.copyOf(earned);
        monthBridges = List.copyOf(monthBridges);
        yearBridges = List.copyOf(yearBridges);
        gifts = List.copyOf(gifts);
        leftOut = List.copyOf(leftOut);
    }
}
