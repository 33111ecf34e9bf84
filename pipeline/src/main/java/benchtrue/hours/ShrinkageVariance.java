package benchtrue.hours;

/**
 * The doubt that the split's leaning leaves. With the tickets' information I, the precision P of what parameters lean on and
 * the gradient g of ln(load), the posterior variance g' (I + P)^-1 g exceeds the sampling variance by
 * g' (I + P)^-1 P (I + P)^-1 g.
 */
final class ShrinkageVariance {
    private final SplitData data;
    private final EffectFit fit;
    private final TicketSplit split;
    private final SplitSlopes slopes;
    private final int types;

    ShrinkageVariance(SplitData data, EffectFit fit, TicketSplit split, int technicians, int types) {
        this.data = data;
        this.fit = fit;
        this.split = split;
        this.types = types;
        slopes = new SplitSlopes(data, fit.layout(), split, technicians, types);
    }

    /** Returns the variance of ln(load) by repair type, given the hours that put each line right. */
    double[] of(double[] rework) {
        double[] hours = hours(rework);
        double[] variance = new double[types];
        for (int type = 0; type < types; type++) {
            double[] direction = slopes.of(type);
            Symmetric.solve(fit.lower(), direction);
            for (int i = 0; i < direction.length && hours[type] > 0; i++) {
                double move = direction[i] / hours[type];
                variance[type] += fit.layout().precision[i] * move * move;
            }
        }
        return variance;
    }

    /** Returns the hours of each repair type at the fit and fills the slopes. */
    private double[] hours(double[] rework) {
        double[] hours = new double[types];
        for (int ticket : data.tickets) {
            split.expect(ticket);
            split.split(ticket);
            int from = data.facts.starts[ticket];
            for (int line = from; line < data.facts.starts[ticket + 1]; line++) {
                if (data.judged[line]) {
                    hours[data.facts.cell[line]] += split.hours[line - from] + rework[line];
                    slopes.add(line, data.facts.cell[line]);
                }
            }
        }
        return hours;
    }
}
