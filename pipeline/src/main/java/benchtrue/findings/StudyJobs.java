package benchtrue.findings;

import benchtrue.costing.CostedLines;
import benchtrue.hours.JobLines;
import benchtrue.settings.Disclosure;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Ints;
import benchtrue.shop.Names;
import benchtrue.statistics.CrossedEffects;
import benchtrue.statistics.KaplanMeier;
import benchtrue.statistics.Normal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.IntToDoubleFunction;
import java.util.function.IntUnaryOperator;

/** Fits the model of hours once and asks it what stands beside the verdicts. */
final class StudyJobs {
    private final JobLines jobs;
    private final int[] finished;
    private final OpenJobs open;
    private final JobModel model;
    private final ShopPace pace;

    /**
     * Fits the model.
     *
     * @param finished rows of finished jobs whose hours are their own and not copied from the quote
     * @param pace of the shop
     */
    StudyJobs(JobLines jobs, int[] finished, ShopPace pace) {
        this.pace = pace;
        this.jobs = jobs;
        this.finished = finished;
        open = OpenJobs.of(jobs);
        model = JobModel.of(jobs, JobRows.of(jobs, new JobFactors(jobs), finished, open.used()));
    }

    List<UsualJob> usualJobs() {
        List<UsualJob> usual = UsualJobs.of(jobs, model, open);
        if (!pace.sure()) {
            return usual;
        }
        double[] factor = pace.corrections(jobs).factor();
        return usual.stream().map(job -> job.atPace(factor[job.repairType()])).toList();
    }

    /** Returns how jobs of repair types with open ones leave the bench. */
    List<BenchCurve> benchCurves(List<UsualJob> usual) {
        return DrawBenchCurves.of(jobs, finished, open.used(), usual);
    }

    /** Returns what sets some jobs of a repair apart from its others. */
    Causes causes(TypeTotals totals, Settings settings) {
        return new FindCauses(jobs, model, pace, settings, totals.loads()).find();
    }

    /**
     * Returns what got slower, but for causes that come and go; the evidence on each repair type that surely did is replaced by
     * that of its newest jobs.
     */
    Drift drift(Causes causes, CurrentLoads current, LoadEvidence[] evidence) {
        Drift drift = new WatchDrift(jobs, model, finished, pace, causes).watch();
        return new Drift(drift.charts(), current.replace(drift.slowings(), evidence), drift.falseAlarmsAYear());
    }

    List<Driver> drivers() {
        return FindDrivers.of(jobs, model);
    }

    List<ShortfallParts> shortfalls(Drift drift, List<RepairFinding> repairs, TypeTotals totals, long shopRate) {
        return new SplitShortfall(jobs, model.rows().factors(), drift.slowings()).of(repairs, totals, shopRate);
    }

    List<PersonFactor> people(Settings settings) {
        return FindPeople.of(jobs, model, settings);
    }

    List<WriterQuotes> writers(CostedLines costs, Settings settings) {
        return FindWriterQuotes.of(costs, model.rows().factors(), settings);
    }

    JobFactors factors() {
        return model.rows().factors();
    }

    int downWeighted() {
        return model.downWeighted();
    }

    /**
     * Figures about people, only where the settings ask for them (methods, section 4): the mix of jobs taken out, from at least
     * thirty jobs over at least three kinds of repair, in the order of names. Rework and copied quotes never enter.
     */
    static final class FindPeople {
        private static final int ENOUGH_JOBS = 30;
        private static final int SEVERAL_TYPES = 3;
        private static final double REACH = Normal.quantile(0.95);

        private final JobRows rows;
        private final CrossedEffects fit;

        private FindPeople(JobModel model) {
            rows = model.rows();
            fit = model.fit();
        }

        /** Returns technicians, then quote writers; none where the settings hide people. */
        static List<PersonFactor> of(JobLines jobs, JobModel model, Settings settings) {
            List<PersonFactor> people = new ArrayList<>();
            if (settings.people() == Disclosure.SHOWN) {
                FindPeople find = new FindPeople(model);
                JobFactors factors = model.rows().factors();
                find.add(
                        people,
                        PersonFactor.Role.TECHNICIAN,
                        JobRows.TECHNICIAN,
                        jobs.ledger().technicians(),
                        factors::technician,
                        line -> 0);
                find.add(
                        people,
                        PersonFactor.Role.QUOTE_WRITER,
                        JobRows.WRITER,
                        factors.writers(),
                        factors::writer,
                        factors::adjustment);
            }
            return people;
        }

        private void add(
                List<PersonFactor> people,
                PersonFactor.Role role,
                int factor,
                Names names,
                IntUnaryOperator personOf,
                IntToDoubleFunction fromTheBook) {
            int[] jobs = new int[names.size()];
            double[] distance = new double[names.size()];
            List<TreeSet<Integer>> types = new ArrayList<>();
            names.all().forEach(name -> types.add(new TreeSet<>()));
            for (int row = 0; row < rows.finished(); row++) {
                int person = personOf.applyAsInt(rows.line()[row]);
                if (person != Absent.INDEX) {
                    jobs[person]++;
                    distance[person] += fromTheBook.applyAsDouble(rows.line()[row]);
                    types.get(person).add(rows.factors().type(rows.line()[row]));
                }
            }
            for (int person = 0; person < jobs.length; person++) {
                if (jobs[person] >= ENOUGH_JOBS && types.get(person).size() >= SEVERAL_TYPES) {
                    // What the usual distance from the book costs is part of a writer's figure, not of the jobs'.
                    double[] usual = new double[1 + rows.traits().size()];
                    usual[0] = distance[person] / jobs[person];
                    int[] alone = new int[JobRows.WRITER + 1];
                    Arrays.fill(alone, Absent.INDEX);
                    alone[factor] = person;
                    double effect = fit.contrast(usual, alone);
                    double reach = REACH * fit.contrastError(usual, alone);
                    people.add(new PersonFactor(
                            role,
                            names.name(person),
                            jobs[person],
                            types.get(person).size(),
                            StrictMath.exp(effect),
                            StrictMath.exp(effect - reach),
                            StrictMath.exp(effect + reach)));
                }
            }
        }
    }

    /** Follows the jobs of each repair type that has open ones until they leave the bench. */
    static final class DrawBenchCurves {
        /** Finished jobs below which a curve has too few steps to be read. */
        private static final int ENOUGH_FINISHED = 8;

        private final JobLines jobs;
        private final Ints[] finished;
        private final Ints[] open;

        private DrawBenchCurves(JobLines jobs, int[] finished, int[] open) {
            this.jobs = jobs;
            this.finished = byType(finished);
            this.open = byType(open);
        }

        /**
         * Returns one curve a repair type with an open job that counts and finished ones enough, those that open jobs change
         * most first.
         *
         * @param finished rows of finished jobs whose hours are their own and not copied from the quote
         * @param open rows of the open jobs that count
         * @param usual by repair type
         */
        static List<BenchCurve> of(JobLines jobs, int[] finished, int[] open, List<UsualJob> usual) {
            DrawBenchCurves curves = new DrawBenchCurves(jobs, finished, open);
            List<BenchCurve> found = new ArrayList<>();
            for (UsualJob job : usual) {
                if (job.openUsed() > 0 && job.jobs() >= ENOUGH_FINISHED) {
                    found.add(curves.curve(job));
                }
            }
            found.sort(Comparator.comparingDouble(DrawBenchCurves::change).reversed());
            return found;
        }

        private static double change(BenchCurve curve) {
            return StrictMath.abs(
                    StrictMath.log(curve.usual().typical() / curve.usual().withoutOpen()));
        }

        private BenchCurve curve(UsualJob usual) {
            double[] done = ratios(finished[usual.repairType()]);
            double[] soFar = ratios(open[usual.repairType()]);
            double[] all = Arrays.copyOf(done, done.length + soFar.length);
            System.arraycopy(soFar, 0, all, done.length, soFar.length);
            boolean[] left = new boolean[all.length];
            Arrays.fill(left, 0, done.length, true);
            boolean[] every = new boolean[done.length];
            Arrays.fill(every, true);
            return new BenchCurve(usual, KaplanMeier.of(all, left), KaplanMeier.of(done, every), soFar);
        }

        private double[] ratios(Ints lines) {
            return Arrays.stream(lines.toArray())
                    .mapToDouble(line -> StrictMath.exp(JobRows.logRatio(jobs, line)))
                    .sorted()
                    .toArray();
        }

        private Ints[] byType(int[] lines) {
            Ints[] rows = new Ints[jobs.ledger().repairTypes().size()];
            Arrays.setAll(rows, type -> new Ints());
            for (int line : lines) {
                rows[jobs.ledger().lines().repairType(line)].add(line);
            }
            return rows;
        }
    }
}
