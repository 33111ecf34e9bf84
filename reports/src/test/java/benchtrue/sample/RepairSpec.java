package benchtrue.sample;

import benchtrue.format.Words;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.WaitReason;
import java.math.BigDecimal;

/**
 * One repair type of the invented shop, with what its price book does not know.
 *
 * @param key repair type
 * @param title what the bench calls it
 * @param family its family
 * @param fits which instruments it is done on
 * @param thenSeconds hours in the first book, or {@link Absent#AMOUNT} where it is new in the second
 * @param nowSeconds hours in the second book, or {@link Absent#AMOUNT} where it was retired
 * @param leastSeconds shortest safe hours, or {@link Absent#AMOUNT}
 * @param hazards words separated by spaces
 * @param leastLabour minimum charge in whole currency units, 0 where none is set
 * @param freeWeeks weeks of free adjustment
 * @param load true hours over today's book hours before people, classes, traits and writers
 * @param sd standard deviation of the log of a line's hours
 * @param weight how often it is asked for, unnormalised
 * @param cure what the instrument waits for afterwards, or null
 * @param cureDays how long
 * @param part part it uses; empty where none
 * @param partCents cost of the part in cents
 * @param companion repair type that comes with it; empty where none
 * @param companionChance how often
 * @param finds repair type that is found on the bench while doing it; empty where none
 * @param findsChance how often
 * @param group of the repair types of one group a visit has at most one; empty where it may join any
 */
record RepairSpec(
        String key,
        String title,
        String family,
        Fits fits,
        long thenSeconds,
        long nowSeconds,
        long leastSeconds,
        String hazards,
        int leastLabour,
        int freeWeeks,
        double load,
        double sd,
        double weight,
        WaitReason cure,
        int cureDays,
        String part,
        int partCents,
        String companion,
        double companionChance,
        String finds,
        double findsChance,
        String group) {

    static RepairSpec of(String row) {
        String[] cell = row.split(",", -1);
        return new RepairSpec(
                cell[0],
                cell[1],
                cell[2],
                Words.parse(Fits.class, cell[3]).orElseThrow(),
                seconds(cell[4]),
                seconds(cell[5]),
                seconds(cell[6]),
                cell[7],
                cell[8].isEmpty() ? 0 : Integer.parseInt(cell[8]),
                Integer.parseInt(cell[9]),
                Double.parseDouble(cell[10]),
                Double.parseDouble(cell[11]),
                Double.parseDouble(cell[12]),
                Words.parse(WaitReason.class, cell[13]).orElse(null),
                Integer.parseInt(cell[14]),
                cell[15],
                Integer.parseInt(cell[16]),
                cell[17],
                Double.parseDouble(cell[18]),
                cell[19],
                Double.parseDouble(cell[20]),
                cell[21]);
    }

    private static long seconds(String hours) {
        return hours.isEmpty() ? Absent.AMOUNT : Hours.seconds(new BigDecimal(hours));
    }

    /** Returns the hours of today's book, else of the last book that had it. */
    long todaySeconds() {
        return Absent.firstOf(nowSeconds, thenSeconds);
    }

    /** Returns the same repair type in a shop that has had only today's book. */
    RepairSpec withOneBook() {
        return new RepairSpec(
                key,
                title,
                family,
                fits,
                nowSeconds,
                nowSeconds,
                leastSeconds,
                hazards,
                leastLabour,
                freeWeeks,
                load,
                sd,
                weight,
                cure,
                cureDays,
                part,
                partCents,
                companion,
                companionChance,
                finds,
                findsChance,
                group);
    }
}
