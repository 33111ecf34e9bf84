package benchtrue.hours;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Ints;
import java.util.Arrays;

/** The split done again under other ticket weights, begun at the plain fit. Safe for parallel callers. */
final class ResampledSplit implements SplitModel {
    private final SplitProblem problem;
    private final MapEm em;
    private final double[] begin;
    private final int types;
    private final boolean[] inBook;
    private final int[] failedTicket;
    private final int[] failedType;
    private final double[] failedHours;

    ResampledSplit(
            SplitProblem problem,
            MapEm em,
            double[] begin,
            BookHours books,
            LineFacts facts,
            boolean[] judged,
            long[] reworkSeconds) {
        this.problem = problem;
        this.em = em;
        this.begin = begin;
        types = books.types();
        inBook = new boolean[types];
        for (int type = 0; type < types; type++) {
            inBook[type] = Absent.has(books.secondsToday(type));
        }
        Ints failed = new Ints();
        for (int line = 0; line < reworkSeconds.length; line++) {
            if (judged[line] && reworkSeconds[line] > 0) {
                failed.add(line);
            }
        }
        int[] line = failed.toArray();
        failedTicket = Arrays.stream(line).map(l -> facts.ticket[l]).toArray();
        failedType = Arrays.stream(line).map(l -> facts.cell[l]).toArray();
        failedHours =
                Arrays.stream(line).mapToDouble(l -> Hours.of(reworkSeconds[l])).toArray();
    }

    @Override
    public int tickets() {
        return problem.tickets;
    }

    @Override
    public double[] loads(double[] ticketWeights) {
        if (ticketWeights.length != problem.tickets) {
            throw new IllegalArgumentException(
                    "weights of " + ticketWeights.length + " tickets for " + problem.tickets + " tickets");
        }
        LoadFit fit = em.fit(ticketWeights, begin);
        double[] loads = Arrays.copyOf(fit.hours(), types);
        for (int i = 0; i < failedTicket.length; i++) {
            loads[failedType[i]] += ticketWeights[failedTicket[i]] * failedHours[i];
        }
        for (int type = 0; type < types; type++) {
            boolean has = inBook[type] && fit.base()[type] > 0;
            loads[type] = has ? loads[type] / fit.base()[type] : Double.NaN;
        }
        return loads;
    }
}
