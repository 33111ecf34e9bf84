package benchtrue.findings;

/**
 * How much of a repair type's time log repeats the quote instead of the clock (methods, section 6).
 *
 * @param repairType code of the repair type
 * @param checked judged lines whose total could be compared with the quote
 * @param matches of those, lines that equal the quote to the minute, alone or as the ticket's total
 * @param expectedMatches matches that honest logging and rounding alone would produce
 * @param copied lines that were probably copied, the sum of their chances
 * @param loadWithout load factor without those lines, NaN where too little is left
 * @param lowerWithout lower end of its 90 % interval, NaN where too few jobs are left
 * @param upperWithout upper end
 */
public record CopiedQuotes(
        int repairType,
        int checked,
        int matches,
        double expectedMatches,
        double copied,
        double loadWithout,
        double lowerWithout,
        double upperWithout) {
    /** Share of copied lines from which the log says too little about the work. */
    static final double MANY = 0.15;

    /** Returns the share of the checked lines that were probably copied. */
    public double share() {
        return checked == 0 ? 0 : copied / checked;
    }

    /** Returns the load factor that can be relied on: where many lines were copied, that of the others. */
    double load(double ofAll) {
        return many() ? loadWithout : ofAll;
    }

    /** Returns whether so many lines were copied that the repair is judged and priced by the others alone. */
    public boolean many() {
        return share() >= MANY;
    }
}
