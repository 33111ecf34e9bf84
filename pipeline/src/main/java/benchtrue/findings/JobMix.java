package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.statistics.CrossedEffects;

/**
 * The model's expectation of each repair type at the mix of people, instruments, traits and quotes of its own judged lines;
 * of a type without lines, at the average one.
 */
final class JobMix {
    private final JobModel model;
    private final double[] expected;
    private final double[] withoutOpen;
    private final double[] atBook;
    private final double[][] values;
    private final int[] count;

    private JobMix(JobModel model, int types) {
        this.model = model;
        expected = new double[types];
        withoutOpen = new double[types];
        atBook = new double[types];
        values = new double[types][1 + model.rows().traits().size()];
        count = new int[types];
    }

    /** Returns the mix of a shop's judged lines. */
    static JobMix of(JobLines jobs, JobModel model) {
        int types = jobs.ledger().repairTypes().size();
        JobMix mix = new JobMix(model, types);
        double usualTechnician = usualTechnician(model);
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.judged(line)) {
                mix.add(model.rows().factors().type(line), line, usualTechnician);
            }
        }
        for (int type = 0; type < types; type++) {
            mix.finish(type, usualTechnician);
        }
        return mix;
    }

    private static double usualTechnician(JobModel model) {
        JobRows rows = model.rows();
        double sum = 0;
        for (int row = 0; row < rows.finished(); row++) {
            int technician = rows.factors().technician(rows.line()[row]);
            sum += technician == Absent.INDEX ? 0 : model.fit().effect(JobRows.TECHNICIAN, technician);
        }
        return sum / StrictMath.max(1, rows.finished());
    }

    private void add(int type, int line, double usualTechnician) {
        double[] x = model.rows().values(line);
        int[] levels = model.rows().levels(line);
        expected[type] += model.fit().predict(x, levels);
        withoutOpen[type] += model.finishedOnly().predict(x, levels);
        for (int j = 0; j < x.length; j++) {
            values[type][j] += x[j];
        }
        atBook[type] += atBook(x, levels) + usualTechnician;
        count[type]++;
    }

    private double atBook(double[] x, int[] levels) {
        double[] unadjusted = x.clone();
        unadjusted[0] = 0;
        int[] nobody = levels.clone();
        nobody[JobRows.TECHNICIAN] = Absent.INDEX;
        nobody[JobRows.WRITER] = Absent.INDEX;
        return model.fit().predict(unadjusted, nobody);
    }

    private void finish(int type, double usualTechnician) {
        double[] x = values[type];
        int[] levels = levels(type);
        if (count[type] == 0) {
            expected[type] = model.fit().predict(x, levels);
            withoutOpen[type] = model.finishedOnly().predict(x, levels);
            atBook[type] = atBook(x, levels) + usualTechnician;
            return;
        }
        expected[type] /= count[type];
        withoutOpen[type] /= count[type];
        atBook[type] /= count[type];
        for (int j = 0; j < x.length; j++) {
            x[j] /= count[type];
        }
    }

    private int[] levels(int type) {
        int family = model.rows().factors().familyOfType(type);
        return new int[] {family, type, Absent.INDEX, Absent.INDEX, Absent.INDEX};
    }

    /** Returns ln(hours / quote) of the usual job, open jobs counted. */
    double expected(int type) {
        return expected[type];
    }

    /** Returns the same with open jobs left out. */
    double withoutOpen(int type) {
        return withoutOpen[type];
    }

    /** Returns ln(hours / today's book) of a job quoted at the book, at the shop's usual mix of technicians. */
    double atBook(int type) {
        return atBook[type];
    }

    /** Returns the standard error of the expectation, the mix taken as it is. */
    double error(int type) {
        CrossedEffects fit = model.fit();
        return fit.predictError(values[type], levels(type));
    }
}
