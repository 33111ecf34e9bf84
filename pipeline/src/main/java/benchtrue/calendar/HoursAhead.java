package benchtrue.calendar;

import benchtrue.statistics.Normal;

/**
 * Hours that a job will have taken, given those it has taken so far: a log-normal cut off below what is done (Aitchison and
 * Brown 1957). With nothing done it is the log-normal itself.
 */
final class HoursAhead {
    /** Beyond so many standard deviations the tail is exponential to within what a shop can use. */
    private static final double FAR = 8;

    private final double mu;
    private final double sigma;
    private final double done;
    private final double cut;

    /**
     * Takes a job.
     *
     * @param mu mean of ln hours
     * @param sigma standard deviation of ln hours, positive
     * @param done hours so far, not negative
     */
    HoursAhead(double mu, double sigma, double done) {
        this.mu = mu;
        this.sigma = sigma;
        this.done = done;
        cut = done > 0 ? (StrictMath.log(done) - mu) / sigma : Double.NEGATIVE_INFINITY;
    }

    /** Returns the expected hours in all. */
    double mean() {
        return moment(1);
    }

    /** Returns the variance of the hours in all. */
    double variance() {
        double mean = mean();
        return StrictMath.max(0, moment(2) - mean * mean);
    }

    private double moment(int power) {
        double tail = cut > Double.NEGATIVE_INFINITY
                ? Normal.logUpperTail(cut - power * sigma) - Normal.logUpperTail(cut)
                : 0;
        return StrictMath.exp(power * mu + power * power * sigma * sigma / 2 + tail);
    }

    /** Returns the hours that the job stays within with probability {@code p}, 0 to 1 exclusive. */
    double quantile(double p) {
        double z;
        if (cut > FAR) {
            z = cut - StrictMath.log(1 - p) / Normal.hazard(cut);
        } else {
            double above = cut > Double.NEGATIVE_INFINITY ? Normal.upperTail(cut) : 1;
            z = -Normal.quantile((1 - p) * above);
        }
        return StrictMath.max(done, StrictMath.exp(mu + sigma * z));
    }

    /** Returns the chance that the job takes longer than some hours. */
    double chanceOver(double hours) {
        if (done >= hours) {
            return 1;
        }
        double z = (StrictMath.log(hours) - mu) / sigma;
        double tail = cut > Double.NEGATIVE_INFINITY ? Normal.logUpperTail(cut) : 0;
        return StrictMath.min(1, StrictMath.exp(Normal.logUpperTail(z) - tail));
    }
}
