package benchtrue.charts.drawing;

import benchtrue.format.Figures;
import java.util.List;

/**
 * Every job of one repair type as a point over time, with lines for what the book says.
 *
 * @param jobs by day
 * @param lines such as the book's hours and the proposal
 * @param turns days on which something changed, with words for it
 * @param from first day shown
 * @param to last day shown
 * @param figures how numbers are written
 */
public record JobChart(List<Job> jobs, List<Line> lines, List<Turn> turns, int from, int to, Figures figures)
        implements Drawing {
    public JobChart {
        jobs = List.copyOf(jobs);
        lines = List.copyOf(lines);
        turns = List.copyOf(turns);
    }

    /**
     * One job.
     *
     * @param day day it came in
     * @param hours hours it took
     * @param mark what stands for it
     */
    public record Job(int day, double hours, Mark mark) {}

    /**
     * Hours that stay the same until they step.
     *
     * @param words what the line is, with its figure of today
     * @param days first day of each step
     * @param hours hours from that day on
     * @param look how it is drawn
     */
    public record Line(String words, int[] days, double[] hours, Look look) {}

    /**
     * A day on which something changed.
     *
     * @param day the day
     * @param words what changed
     */
    public record Turn(int day, String words) {}

    /** How a line is drawn; told apart by dashes before colour. */
    public enum Look {
        BOOK,
        PROPOSED
    }

    @Override
    public void layOn(TextFlow flow) {
        new JobSheet(this, flow).lay();
    }
}
