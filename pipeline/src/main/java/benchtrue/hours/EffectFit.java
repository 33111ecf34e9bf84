package benchtrue.hours;

/**
 * The fitted model of hours.
 *
 * @param parameters estimates
 * @param layout what they mean
 * @param spreads how much hours scatter around it
 * @param lower Cholesky factor of the information, what the parameters lean on included
 * @param ofTickets the information of the tickets alone
 */
record EffectFit(double[] parameters, Parameters layout, Spreads spreads, double[][] lower, double[][] ofTickets) {
    /** Returns the fixed hours of a visit, 0 where the data do not support any. */
    double visitHours() {
        return parameters[layout.visit];
    }

    /** Returns the coefficient of the log of a quote over the book. */
    double quoteSlope() {
        return parameters[layout.slope];
    }
}
