package benchtrue.sample;

import java.nio.file.Path;

/**
 * What invented shop to write.
 *
 * @param folder the shop folder, new or empty
 * @param seed the same seed gives the same bytes
 * @param tickets visits in the whole history, at least 1; every dirty kind is planted from 400 on
 * @param years length of the history, 1 to 40; it ends 2026-10-31
 * @param tidiness how the records are kept
 * @param loads the true hours per quoted hour
 * @param slowing whether one repair type gets slower
 * @param wholeTicketShare share of tickets with several lines whose hours are logged to the ticket as a whole, 0 to 1
 * @param yearlyGrowth growth of the number of tickets a year: 0 constant, 0.1 a tenth more every year
 */
public record SampleOptions(
        Path folder,
        long seed,
        int tickets,
        int years,
        Tidiness tidiness,
        Loads loads,
        Slowing slowing,
        double wholeTicketShare,
        double yearlyGrowth) {
    public SampleOptions {
        require(tickets >= 1, "tickets", tickets, "at least 1");
        require(years >= 1 && years <= 40, "years", years, "1 to 40");
        require(wholeTicketShare >= 0 && wholeTicketShare <= 1, "share of whole tickets", wholeTicketShare, "0 to 1");
        require(yearlyGrowth > -0.5 && yearlyGrowth < 10, "yearly growth", yearlyGrowth, "-0.5 to 10");
    }

    private static void require(boolean holds, String name, Object found, String expected) {
        if (!holds) {
            throw new IllegalArgumentException(name + " is " + found + ", expected " + expected);
        }
    }

    /** Returns the options of the committed sample: seed 1, 1,200 tickets over 4 years, untidy. */
    public static SampleOptions standard(Path folder) {
        return new SampleOptions(folder, 1, 1_200, 4, Tidiness.UNTIDY, Loads.SPREAD, Slowing.PLAIN, 0.6, 0.04);
    }

    public SampleOptions withSeed(long other) {
        return new SampleOptions(
                folder, other, tickets, years, tidiness, loads, slowing, wholeTicketShare, yearlyGrowth);
    }

    public SampleOptions withTickets(int other) {
        return new SampleOptions(folder, seed, other, years, tidiness, loads, slowing, wholeTicketShare, yearlyGrowth);
    }

    public SampleOptions withYears(int other) {
        return new SampleOptions(
                folder, seed, tickets, other, tidiness, loads, slowing, wholeTicketShare, yearlyGrowth);
    }

    public SampleOptions with(Tidiness other) {
        return new SampleOptions(folder, seed, tickets, years, other, loads, slowing, wholeTicketShare, yearlyGrowth);
    }

    public SampleOptions with(Loads other) {
        return new SampleOptions(
                folder, seed, tickets, years, tidiness, other, slowing, wholeTicketShare, yearlyGrowth);
    }

    public SampleOptions with(Slowing other) {
        return new SampleOptions(folder, seed, tickets, years, tidiness, loads, other, wholeTicketShare, yearlyGrowth);
    }

    public SampleOptions withWholeTicketShare(double other) {
        return new SampleOptions(folder, seed, tickets, years, tidiness, loads, slowing, other, yearlyGrowth);
    }

    public SampleOptions withYearlyGrowth(double other) {
        return new SampleOptions(folder, seed, tickets, years, tidiness, loads, slowing, wholeTicketShare, other);
    }

    boolean untidy() {
        return tidiness == Tidiness.UNTIDY;
    }
}
