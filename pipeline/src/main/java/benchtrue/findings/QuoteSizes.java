package benchtrue.findings;

import java.util.List;

/**
 * How the hours per quoted hour of one repair run with the size of its quote, where they surely do. Loads are those of the
 * middle job, shrunk to the repair's own.
 *
 * @param repairType code of the repair type
 * @param classes by rising quotes; their loads only rise or only fall
 * @param small quotes below {@code from}
 * @param large the others
 * @param from quoted hours, against today's book, from which a quote is large
 */
public record QuoteSizes(int repairType, List<SizeClass> classes, SizeClass small, SizeClass large, double from) {
    public QuoteSizes {
        classes = List.copyOf(classes);
    }

    /**
     * Jobs with quotes of about one size.
     *
     * @param jobs how many
     * @param leastQuoted hours of the shortest quote
     * @param usualQuoted hours of the middle one
     * @param mostQuoted hours of the longest
     * @param load hours per quoted hour of the middle job
     * @param lower lower end of its 90 % interval
     * @param upper upper end
     * @param perUsual load over that of all the repair's jobs
     */
    public record SizeClass(
            int jobs,
            double leastQuoted,
            double usualQuoted,
            double mostQuoted,
            double load,
            double lower,
            double upper,
            double perUsual) {}

    /** Returns what the load of the middle job is multiplied by for a small or a large quote. */
    public double inTwoLines(double quotedHours) {
        return (quotedHours < from ? small : large).perUsual();
    }

    /** Returns the same by the curve through all classes, straight on logarithms and level beyond both ends. */
    public double onTheCurve(double quotedHours) {
        int next = 0;
        while (next < classes.size() && classes.get(next).usualQuoted() < quotedHours) {
            next++;
        }
        if (next == 0 || next == classes.size()) {
            return classes.get(Math.min(next, classes.size() - 1)).perUsual();
        }
        SizeClass before = classes.get(next - 1);
        SizeClass after = classes.get(next);
        double way = StrictMath.log(quotedHours / before.usualQuoted())
                / StrictMath.log(after.usualQuoted() / before.usualQuoted());
        return before.perUsual() * StrictMath.pow(after.perUsual() / before.perUsual(), way);
    }

    /** Returns whether large quotes take less per quoted hour than small ones. */
    public boolean falls() {
        return large.perUsual() < small.perUsual();
    }
}
