package benchtrue.nightly;

import benchtrue.calendar.Calendar;
import benchtrue.calendar.PlanCalendar;
import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.findings.FindVerdicts;
import benchtrue.findings.Findings;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitHours;
import benchtrue.intake.Exports;
import benchtrue.intake.ReadExports;
import benchtrue.reconcile.Reconcile;
import benchtrue.reconcile.Reconciled;
import benchtrue.reconcile.SetAside;
import benchtrue.revision.ProposeRevision;
import benchtrue.revision.Revision;
import benchtrue.settings.Settings;
import benchtrue.tables.WriteSetAside;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Supplier;

/** One night's run: the stages in order, from the shop's exports to published results. */
public final class Night {
    private static final int STAGES = 8;
    private final List<Report> reports;
    private final Progress progress;
    private final Clock clock;
    private final String version;

    /**
     * Takes what the run can't know of itself.
     *
     * @param reports what is written beside the tables
     * @param progress hears how far the run is
     * @param clock for durations, and for which results lie ahead of today; no result depends on it
     * @param version of the program, for the record of the run
     */
    public Night(List<Report> reports, Progress progress, Clock clock, String version) {
        this.reports = List.copyOf(reports);
        this.progress = progress;
        this.clock = clock;
        this.version = version;
    }

    /**
     * Reviews a shop and publishes the results under {@code out/<as-of date>}, whole or not at all.
     *
     * @param shop the shop folder
     * @param asOf last day that counts, in days since 1970-01-01
     * @throws benchtrue.shop.Refusal with its exit code and the words for the owner, where the run can't go on
     */
    public Published run(Path shop, Settings settings, int asOf) {
        return ShopLock.whileHeld(shop, () -> runAlone(shop, settings, asOf));
    }

    /**
     * Writes what adopted books leave for people and for other systems at once, without a night, into {@code out/adopted}; the
     * next night has it among its results and takes that folder away.
     *
     * @param asOf last day that counts, in days since 1970-01-01
     * @return the folder
     */
    public Path handOut(Path shop, Settings settings, int asOf) {
        return ShopLock.whileHeld(shop, () -> {
            Stages stages = new Stages(STAGES, progress, clock);
            Review review = review(shop, rows(shop, settings, asOf, stages), settings, stages);
            List<Report> all = new ArrayList<>(reports);
            all.add(new ForYourSystems(shop));
            return stages.run(
                    "Writing what to hand out", () -> publish(shop, settings).handOut(review, all));
        });
    }

    private Published runAlone(Path shop, Settings settings, int asOf) {
        Publish publish = publish(shop, settings);
        publish.runBefore().ifPresent(progress::tells);
        try {
            Published published = stages(shop, settings, asOf, publish);
            publish.ended(asOf, published.took());
            return published;
        } catch (RuntimeException e) {
            publish.ended(asOf, e);
            throw e;
        }
    }

    private Publish publish(Path shop, Settings settings) {
        LocalDate today = LocalDate.now(clock.withZone(settings.zone()));
        return new Publish(shop.resolve("out"), today.plusDays(1), version);
    }

    private Published stages(Path shop, Settings settings, int asOf, Publish publish) {
        StandingQuestions.of(settings, asOf); // What can't be meant is told before the work, not after it.
        Stages stages = new Stages(STAGES, noted(asOf, publish), clock);
        List<String> notes = new ArrayList<>(publish.clear());
        List<FileDigest> beside = Inputs.beside(shop);
        Reconciled rows = rows(shop, settings, asOf, stages);
        Review review = review(shop, rows, settings, stages);
        Inputs inputs = Inputs.of(shop, rows.files(), beside);
        Path folder = stages.run("Writing the results", () -> publish.publish(review, inputs, reports(shop, rows)));
        notes.addAll(publish.clear(settings.keepResults(), asOf));
        return new Published(review, folder, notes, stages.took());
    }

    /** In a method of its own, so that what was read is forgotten once the ledger is there. */
    private static Reconciled rows(Path shop, Settings settings, int asOf, Stages stages) {
        Exports exports = stages.run("Reading the exports", () -> new ReadExports().read(shop, settings));
        return stages.run("Bringing the rows together", () -> new Reconcile().reconcile(exports, settings, asOf));
    }

    private Progress noted(int asOf, Publish publish) {
        return new Progress() {
            @Override
            public void begins(int number, int of, String what) {
                publish.begins(asOf, what);
                progress.begins(number, of, what);
            }

            @Override
            public void tells(String what) {
                progress.tells(what);
            }
        };
    }

    private static Review review(Path shop, Reconciled rows, Settings settings, Stages stages) {
        JobLines jobs = stages.run("Putting hours on lines", () -> new SplitHours().split(rows.ledger(), settings));
        CostedLines costs = stages.run("Costing every line", () -> new CostLines().cost(jobs, settings));
        // Findings ask nothing of the calendar, which is planned beside them.
        ForkJoinTask<Calendar> planning = ForkJoinTask.adapt(() -> new PlanCalendar().plan(costs, settings))
                .fork();
        Findings findings = stages.run("Telling faults from noise", () -> new FindVerdicts().find(costs, settings));
        Calendar calendar = stages.run("Looking at the calendar", planning::join);
        Decisions decided = new Decisions(
                DecisionFiles.of(shop), rows.ledger().books(), rows.ledger().asOf());
        Revision revision = stages.run(
                "Drafting the price book",
                () -> new ProposeRevision().propose(costs, findings, settings, decided.already()));
        return new Review(
                settings,
                rows.ledger(),
                jobs,
                costs,
                calendar,
                findings,
                revision,
                ProveBalances.prove(rows.balances(), costs, calendar.balance()),
                rows.notices(),
                Seals.of(shop).restatements(costs, settings),
                counts(rows.setAside()),
                List.of(),
                Optional.empty());
    }

    private List<Report> reports(Path shop, Reconciled rows) {
        List<Report> all = new ArrayList<>(reports);
        all.add(new ForYourSystems(shop));
        all.add((review, folder) -> new WriteSetAside().write(rows.setAside(), folder.resolve("set-aside")));
        return all;
    }

    private static SortedMap<String, Long> counts(SetAside rows) {
        SortedMap<String, Long> counts = new TreeMap<>();
        rows.tables().forEach(table -> counts.put(table.title(), rows.count(table)));
        return counts;
    }

    /** Announces each stage of a run and keeps how long it took. */
    static final class Stages {
        private final int of;
        private final Progress progress;
        private final Clock clock;
        private final Map<String, Duration> took = new LinkedHashMap<>();

        Stages(int of, Progress progress, Clock clock) {
            this.of = of;
            this.progress = progress;
            this.clock = clock;
        }

        <T> T run(String what, Supplier<T> stage) {
            progress.begins(took.size() + 1, of, what);
            Instant began = clock.instant();
            T result = stage.get();
            took.put(what, Duration.between(began, clock.instant()));
            return result;
        }

        /** Returns how long each stage took, in order. */
        Map<String, Duration> took() {
            return new LinkedHashMap<>(took);
        }
    }
}
