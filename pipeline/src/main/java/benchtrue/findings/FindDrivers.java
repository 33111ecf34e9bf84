package benchtrue.findings;

import benchtrue.findings.JobFactors.TraitColumn;
import benchtrue.hours.JobLines;
import benchtrue.shop.Hours;
import benchtrue.statistics.BenjaminiHochberg;
import benchtrue.statistics.CrossedEffects;
import benchtrue.statistics.Normal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds which traits lengthen which family of repairs, all else alike, with one correction over all of them. */
final class FindDrivers {
    private static final double REACH = Normal.quantile(0.95);

    private FindDrivers() {}

    /** Returns every trait and family that could be told apart, the most extra hours a job first. */
    static List<Driver> of(JobLines jobs, JobModel model) {
        List<TraitColumn> columns = model.rows().traits();
        double[] p = new double[columns.size()];
        for (int i = 0; i < p.length; i++) {
            double z = model.fit().coefficient(i + 2) / model.fit().error(i + 2);
            p[i] = 2 * Normal.upperTail(StrictMath.abs(z));
        }
        double[] adjusted = BenjaminiHochberg.adjust(p);
        List<Driver> drivers = new ArrayList<>();
        for (int i = 0; i < p.length; i++) {
            if (!Double.isNaN(p[i])) {
                drivers.add(driver(jobs, model, i, adjusted[i]));
            }
        }
        drivers.sort(Comparator.comparingDouble(Driver::extraHours)
                .reversed()
                .thenComparing(Driver::family)
                .thenComparing(Driver::trait));
        return drivers;
    }

    private static Driver driver(JobLines jobs, JobModel model, int index, double adjustedP) {
        TraitColumn column = model.rows().traits().get(index);
        CrossedEffects fit = model.fit();
        // Place 0 is the intercept, place 1 the quote's adjustment.
        double effect = fit.coefficient(index + 2);
        double reach = REACH * fit.error(index + 2);
        double hours = meanHours(jobs, model.rows(), column);
        JobFactors factors = model.rows().factors();
        return new Driver(
                factors.families().name(column.family()),
                factors.traits().name(column.trait()),
                column.with(),
                column.without(),
                StrictMath.exp(effect),
                StrictMath.exp(effect - reach),
                StrictMath.exp(effect + reach),
                adjustedP,
                extra(hours, effect),
                extra(hours, effect - reach),
                extra(hours, effect + reach));
    }

    /** Of the hours of a job with the trait, those that it would not have taken without. */
    private static double extra(double hours, double effect) {
        return hours * -StrictMath.expm1(-effect);
    }

    private static double meanHours(JobLines jobs, JobRows rows, TraitColumn column) {
        long seconds = 0;
        for (int row = 0; row < rows.finished(); row++) {
            int line = rows.line()[row];
            boolean has = rows.factors().family(line) == column.family()
                    && rows.factors().has(line, column.trait());
            seconds += has ? jobs.actualSeconds(line) : 0;
        }
        return Hours.of(seconds) / column.with();
    }
}
