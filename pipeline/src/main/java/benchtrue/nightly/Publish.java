package benchtrue.nightly;

import benchtrue.shop.Absent;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import benchtrue.tables.EarlierResult;
import benchtrue.tables.WriteTables;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;

/** Writes a night's results into a folder of their own and publishes it whole, or not at all. */
final class Publish {
    private static final String FULL = "the disk is full";

    /** In bytes: less than a buffer or two is as good as nothing. */
    private static final long LEAST_ROOM = 1 << 20;

    /** In days: a review this much older shows what became of it. */
    private static final int MONTH = 27;

    private final Path out;
    private final PublishedResults shelf;
    private final RunCleanup sweep;
    private final LastRun last;
    private final LocalDate horizon;
    private final String version;

    /**
     * Takes where results go.
     *
     * @param horizon the last day that may have come; a result beyond it never is the latest
     */
    Publish(Path out, LocalDate horizon, String version) {
        this.out = out;
        this.horizon = horizon;
        this.shelf = new PublishedResults(out);
        this.sweep = new RunCleanup(out, shelf);
        this.last = new LastRun(out);
        this.version = version;
    }

    /** Clears what earlier runs left behind; returns what the owner should know of it, in words. */
    List<String> clear() {
        return orCannotWrite(() -> {
            sweep.passing();
            shelf.restore();
            List<String> notes = new ArrayList<>(sweep.unused());
            shelf.beyond(horizon)
                    .forEach(date -> notes.add("out/" + date
                            + " is a result for a day that has not come. It stands aside:"
                            + " out/latest shows the newest before it. Delete out/" + date + " if it was a mistake."));
            return notes;
        });
    }

    /** Clears what the new result replaces and what is older than the owner keeps; returns what did not go, in words. */
    List<String> clear(int keep, int asOf) {
        return orCannotWrite(() -> sweep.old(keep, LocalDate.ofEpochDay(asOf)));
    }

    /** Returns the folder under which the results can be opened. */
    Path publish(Review review, Inputs inputs, List<Report> reports) {
        return orCannotWrite(() -> {
            LocalDate date = LocalDate.ofEpochDay(review.ledger().asOf());
            RunFolder run = RunFolder.begin(out, date + "-" + inputs.digest());
            try {
                write(review, inputs, reports, run);
                shelf.publish(date, run.seal(), horizon);
                HandedOut.clear(out);
                return out.resolve(date.toString());
            } catch (IOException | RuntimeException e) {
                if (isFull()) { // Asked before the unfinished run makes room again.
                    throw new IOException(FULL, e);
                }
                throw e;
            } finally {
                run.abandon();
            }
        });
    }

    /** Writes reports of adopted books where they stay until the next night; returns the folder. */
    Path handOut(Review review, List<Report> reports) {
        return orCannotWrite(() -> HandedOut.write(review, reports, out));
    }

    private void write(Review study, Inputs inputs, List<Report> reports, RunFolder run) throws IOException {
        Path folder = run.path();
        // The draft workbook tells which revision.csv it was made from, so that stands first.
        WriteTables tables = new WriteTables(study.costs(), study.calendar(), study.findings(), study.settings());
        tables.small(study.revision(), folder);
        Optional<PublishedResults.Result> month =
                shelf.before(LocalDate.ofEpochDay(study.ledger().asOf()).minusDays(MONTH));
        Review review = writeReports(study.after(month.map(PublishedResults.Result::asOf)), tables, reports, run);
        List<Map<String, Object>> answers = StandingQuestions.write(review.breakdowns(), folder);
        text(folder.resolve("datapackage.json"), Json.text(tables.described(folder, answers)));
        Optional<PublishedResults.Result> earlier =
                shelf.before(LocalDate.ofEpochDay(review.ledger().asOf()));
        Optional<PublishedResults.Result> waiting = waiting(review);
        text(folder.resolve("digest.txt"), whatChanged(review, decisions(), earlier, waiting));
        text(
                folder.resolve(RunRecord.FILE),
                RunRecord.text(version, review, inputs, comparedWith(earlier, waiting, month), run.digests()));
    }

    /** The lines, which are as long as all else together, are written beside what shows the answers to standing questions. */
    private static Review writeReports(Review study, WriteTables tables, List<Report> reports, RunFolder run)
            throws IOException {
        AtomicReference<Review> answered = new AtomicReference<>();
        SideBySide.run(List.of(
                () -> {
                    answered.set(study.answering(StandingQuestions.of(
                                    study.settings(), study.ledger().asOf())
                            .answers(tables.lines(), study.jobs().size())));
                    SideBySide.run(writings(answered.get(), tables, reports, run.path()));
                },
                () -> {
                    tables.lines(run.path());
                    run.digest(run.path().resolve(WriteTables.LINES));
                }));
        return answered.get();
    }

    private static List<SideBySide.Work> writings(
            Review review, WriteTables tables, List<Report> reports, Path folder) {
        List<SideBySide.Work> writings = new ArrayList<>();
        if (!review.restatements().isEmpty()) {
            writings.add(() -> tables.restatements(review.restatements(), folder));
        }
        writings.add(() -> tables.calls(folder));
        for (Report report : reports) {
            writings.add(() -> report.write(review, folder));
        }
        return writings;
    }

    /** A damaged earlier result is no reason to go without tonight's. */
    private static String whatChanged(
            Review review,
            DecisionFiles decisions,
            Optional<PublishedResults.Result> earlier,
            Optional<PublishedResults.Result> waiting) {
        int since = waiting.map(draft -> (int) draft.asOf().toEpochDay()).orElse(Absent.DAY);
        WhatChanged changes = new WhatChanged(review, since, decisions);
        if (earlier.isEmpty()) {
            return changes.first();
        }
        int day = (int) earlier.get().asOf().toEpochDay();
        try {
            Path folder = earlier.get().folder();
            return changes.since(new WhatChanged.Earlier(
                    day,
                    new EarlierResult(folder).findings(),
                    new EarlierResult(folder).promises(),
                    EarlierRun.of(folder)));
        } catch (IOException damaged) {
            return changes.sinceUnreadable(day);
        }
    }

    private Optional<PublishedResults.Result> waiting(Review review) throws IOException {
        Path shop = out.toAbsolutePath().getParent();
        Decisions decided = new Decisions(
                DecisionFiles.of(shop), review.ledger().books(), review.ledger().asOf());
        return PendingDraft.of(shelf, decided.lastDecided(), review);
    }

    private DecisionFiles decisions() {
        return DecisionFiles.of(out.toAbsolutePath().getParent());
    }

    private List<FileDigest> comparedWith(
            Optional<PublishedResults.Result> earlier,
            Optional<PublishedResults.Result> waiting,
            Optional<PublishedResults.Result> month)
            throws IOException {
        List<FileDigest> compared = new ArrayList<>();
        if (waiting.isPresent()) {
            compared.add(FileDigest.of(out, waiting.get().folder().resolve(WriteTables.REVISION)));
        }
        if (month.isPresent() && !month.equals(earlier)) {
            Path record = month.get().folder().resolve(RunRecord.FILE);
            if (Files.isReadable(record)) {
                compared.add(FileDigest.of(out, record));
            }
        }
        if (earlier.isPresent()) {
            for (String name : List.of(EarlierResult.FINDINGS, RunRecord.FILE)) {
                Path file = earlier.get().folder().resolve(name);
                if (Files.isReadable(file)) {
                    compared.add(FileDigest.of(out, file));
                }
            }
        }
        return compared;
    }

    private static void text(Path file, String text) throws IOException {
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }

    /** Returns what the owner should know of the run before, in words; nothing where it published. */
    Optional<String> runBefore() {
        return last.told();
    }

    /** Notes that a stage begins, for the next run to read should this one be killed. */
    void begins(int asOf, String stage) {
        orCannotWrite(() -> {
            last.begins(asOf, stage);
            return stage;
        });
    }

    /** Notes that the run published, and how long its stages took. */
    void ended(int asOf, Map<String, Duration> took) {
        orCannotWrite(() -> {
            Timings.write(out, took);
            last.published(asOf);
            return took;
        });
    }

    /** Notes why the run ended without results. */
    void ended(int asOf, RuntimeException reason) {
        last.ended(asOf, reason);
    }

    private interface Writing<T> {
        T write() throws IOException;
    }

    private <T> T orCannotWrite(Writing<T> writing) {
        try {
            return writing.write();
        } catch (IOException e) {
            throw cannotWrite(e);
        } catch (Refusal e) {
            throw e;
        } catch (RuntimeException e) { // Libraries wrap what the disk refused them, some of them twice.
            throw Stream.iterate(e, Objects::nonNull, Throwable::getCause)
                    .filter(IOException.class::isInstance)
                    .findFirst()
                    .<RuntimeException>map(this::cannotWrite)
                    .orElse(e);
        }
    }

    private Refusal cannotWrite(Throwable e) {
        String why = FULL.equals(e.getMessage()) ? FULL + ". Make room there" : e + ". Check who may write there";
        return new Refusal(
                ExitCode.CANNOT_WRITE,
                "The results can't be written to " + out + ": " + why + ", then run it again. The last good result is"
                        + " untouched.",
                e);
    }

    private boolean isFull() {
        try {
            return Files.getFileStore(out).getUsableSpace() < LEAST_ROOM;
        } catch (IOException unknown) {
            return false; // The error itself is told then.
        }
    }
}
