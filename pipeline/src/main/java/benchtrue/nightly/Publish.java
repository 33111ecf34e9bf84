package benchtrue.nightly;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import benchtrue.tables.ReadFindings;
import benchtrue.tables.WriteRestatements;
import benchtrue.tables.WriteTables;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes a night's results into a folder of their own and publishes it whole, or not at all. */
final class Publish {
    private final Path out;
    private final Shelf shelf;
    private final String version;

    Publish(Path out, String version) {
        this.out = out;
        this.shelf = new Shelf(out);
        this.version = version;
    }

    /** Clears what earlier runs left behind; returns the names of those that never ended. */
    List<String> clear() {
        return orCannotWrite(shelf::clear);
    }

    /** Returns the folder under which the results can be opened. */
    Path publish(Review review, Inputs inputs, List<Report> reports) {
        return orCannotWrite(() -> {
            LocalDate date = LocalDate.ofEpochDay(review.ledger().asOf());
            RunFolder run = RunFolder.begin(out, date + "-" + inputs.digest());
            try {
                write(review, inputs, reports, run);
                Path whole = run.seal();
                shelf.publish(date, whole);
                return Files.exists(out.resolve(date.toString())) ? out.resolve(date.toString()) : whole;
            } finally {
                run.abandon();
            }
        });
    }

    private void write(Review review, Inputs inputs, List<Report> reports, RunFolder run) throws IOException {
        Path folder = run.path();
        new WriteTables().write(review.costs(), review.findings(), review.revision(), folder);
        if (!review.restatements().isEmpty()) {
            new WriteRestatements().write(review.restatements(), folder);
        }
        for (Report report : reports) {
            report.write(review, folder);
        }
        text(folder.resolve("digest.txt"), whatChanged(review));
        text(folder.resolve(RunRecord.FILE), RunRecord.text(version, review, inputs.files(), run.digests()));
    }

    private String whatChanged(Review review) throws IOException {
        LocalDate date = LocalDate.ofEpochDay(review.ledger().asOf());
        Optional<Shelf.Result> earlier = shelf.before(date);
        WhatChanged changes = new WhatChanged(review);
        if (earlier.isEmpty()) {
            return changes.first();
        }
        return changes.since(
                (int) earlier.get().asOf().toEpochDay(),
                new ReadFindings().read(earlier.get().folder()));
    }

    private static void text(Path file, String text) throws IOException {
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }

    /** Notes how long the stages took, outside the dated results. */
    void note(Map<String, Duration> took) {
        orCannotWrite(() -> {
            Timings.write(out, took);
            return took;
        });
    }

    private interface Writing<T> {
        T write() throws IOException;
    }

    private <T> T orCannotWrite(Writing<T> writing) {
        try {
            return writing.write();
        } catch (IOException | UncheckedIOException e) {
            throw new Refusal(
                    ExitCode.CANNOT_WRITE,
                    "The results can't be written to " + out + ": " + e
                            + ". The last good result is untouched. Check who may write there and that the disk has room.",
                    e);
        }
    }
}
