package benchtrue.format;

import java.util.List;

/**
 * The words of statistics that may stand where a person reads, each with its plain form. Workbooks print the list in their
 * notes; every other word of statistics is for code and its documentation.
 */
public final class Glossary {
    /** The words, in the order in which a reader meets them. */
    public static final List<Entry> ENTRIES = List.of(
            new Entry("hours per quoted hour", "1.20 means that a job quoted at 10 hours takes 12"),
            new Entry("usual job", "half of the jobs of that kind take longer, half take less"),
            new Entry("90 % sure", "the true figure lies beyond that end of a range one time in twenty"),
            new Entry("90 % range", "it holds the true figure nine times in ten"),
            new Entry("chance", "in how many of a hundred such cases it would come about"),
            new Entry("average", "all hours, divided by the number of jobs: a few very long jobs raise it"),
            new Entry("spread", "how far jobs of one kind differ from each other"),
            new Entry("jobs that fit the quote", "jobs that take no longer than they are quoted"),
            new Entry("coverage", "the rule that asks for hours which a given share of jobs fit"),
            new Entry("break-even", "the hours, or the rate, at which nothing is lost and nothing is gained"));

    private Glossary() {}

    /**
     * One word.
     *
     * @param word as it stands on a page, a sheet or a picture
     * @param plain what it says, in words of the bench
     */
    public record Entry(String word, String plain) {}
}
