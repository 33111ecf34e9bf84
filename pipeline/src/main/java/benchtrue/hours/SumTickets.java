package benchtrue.hours;

/** Sums tickets up by group at the fit. */
final class SumTickets {
    private final SplitData data;
    private final EffectFit fit;
    private final FittedScores fitted;
    private final TicketSplit split;
    private final int technicians;
    private final double[] rework;
    private final boolean[] inBook;
    private final SplitSlopes slopes;

    /**
     * Takes the fit.
     *
     * @param split at the fit
     * @param rework hours that put each line right, 0 where it is not judged
     * @param inBook by repair type
     */
    SumTickets(
            SplitData data,
            EffectFit fit,
            FittedScores fitted,
            TicketSplit split,
            int technicians,
            double[] rework,
            boolean[] inBook) {
        this.data = data;
        this.fit = fit;
        this.fitted = fitted;
        this.split = split;
        this.technicians = technicians;
        this.rework = rework;
        this.inBook = inBook;
        slopes = new SplitSlopes(data, fit.layout(), split, technicians, inBook.length);
    }

    FirstOrderGroups sum(int[] groupOfTicket, int groups) {
        int types = inBook.length;
        double[][] hours = new double[groups][types];
        double[][] quoted = new double[groups][types];
        double[][] score = new double[groups][];
        Effects scores = new Effects(data, technicians);
        int[] byGroup = byGroup(groupOfTicket, groups);
        int from = 0;
        for (int group = 0; group < groups; group++) {
            scores.clear();
            double visit = 0;
            for (; from < byGroup.length && groupOfTicket[byGroup[from]] == group; from++) {
                visit += fitted.add(byGroup[from], 1, scores);
                add(byGroup[from], hours[group], quoted[group]);
            }
            score[group] = fit.layout().sum(scores, visit);
        }
        return new FirstOrderGroups(hours, quoted, moves(score), types);
    }

    /** Returns by group and type how the type's hours move when the group's score moves the parameters. */
    private double[][] moves(double[][] score) {
        double[][] moves = new double[score.length][inBook.length];
        for (int type = 0; type < inBook.length; type++) {
            double[] reach = slopes.of(type);
            Symmetric.solve(fit.lower(), reach);
            for (int group = 0; group < score.length; group++) {
                moves[group][type] = product(reach, score[group]);
            }
        }
        return moves;
    }

    private static double product(double[] reach, double[] score) {
        double sum = 0;
        for (int i = 0; i < reach.length; i++) {
            sum += reach[i] * score[i];
        }
        return sum;
    }

    /** Returns the tickets that count, group by group. */
    private int[] byGroup(int[] groupOfTicket, int groups) {
        int[] next = new int[groups + 1];
        for (int ticket : data.tickets) {
            next[groupOfTicket[ticket] + 1]++;
        }
        for (int group = 0; group < groups; group++) {
            next[group + 1] += next[group];
        }
        int[] sorted = new int[data.tickets.length];
        for (int ticket : data.tickets) {
            sorted[next[groupOfTicket[ticket]]++] = ticket;
        }
        return sorted;
    }

    private void add(int ticket, double[] hours, double[] quoted) {
        split.expect(ticket);
        split.split(ticket);
        int from = data.facts.starts[ticket];
        for (int line = from; line < data.facts.starts[ticket + 1]; line++) {
            int type = data.facts.cell[line];
            if (data.judged[line] && inBook[type]) {
                hours[type] += split.hours[line - from] + rework[line];
                quoted[type] += data.facts.todayHours[line];
                slopes.add(line, type);
            }
        }
    }
}
