package benchtrue.hours;

/**
 * A shop's tickets split once more, with more known of their lines.
 *
 * @param expected by line, hours that were to be expected of it; 0 for a line that takes none
 * @param taken by line, hours that it took; 0 likewise
 */
public record SplitAgain(double[] expected, double[] taken) {
    static SplitAgain of(SplitData data, TicketSplit split) {
        double[] expected = new double[data.role.length];
        double[] taken = new double[data.role.length];
        for (int ticket = 0; ticket < data.wholeHours.length; ticket++) {
            split.expect(ticket);
            split.split(ticket);
            int from = data.facts.starts[ticket];
            for (int line = from; line < data.facts.starts[ticket + 1]; line++) {
                boolean takes = data.role[line] != SplitData.OUT;
                expected[line] = takes ? split.mean[line - from] : 0;
                taken[line] = takes ? split.hours[line - from] : 0;
            }
        }
        return new SplitAgain(expected, taken);
    }
}
