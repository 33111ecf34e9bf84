package benchtrue.nightly;

import benchtrue.intake.ReadExports;
import benchtrue.reconcile.Ledger;
import benchtrue.reconcile.Reconcile;
import benchtrue.revision.DecidedDraft;
import benchtrue.revision.NextBook;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.PriceBook;
import benchtrue.shop.Refusal;
import benchtrue.tables.WritePriceBook;
import benchtrue.tables.WriteTables;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Makes the owner's decisions the next price book: {@code decisions/<effective>.json} first, then
 * {@code price-book/<effective>.csv}, so that no book ever stands without its decisions. Neither is ever overwritten.
 */
public final class AdoptDecisions {
    static final String BOOKS = "price-book";

    /**
     * What was adopted.
     *
     * @param today the version in force until then
     * @param next the next version
     * @param file where it stands
     */
    public record Adopted(PriceBook today, PriceBook next, Path file) {}

    /**
     * Adopts a decided draft.
     *
     * @param effective first day the next book is in force
     * @param decidedOn day of the decision
     * @param by who decided
     * @throws Refusal where the draft is of other results than the newest, was adopted already, does not add up, or the
     *     date is not after the newest book's
     */
    public Adopted adopt(
            Path shop, Settings settings, DecidedDraft draft, LocalDate effective, LocalDate decidedOn, String by) {
        return ShopLock.whileHeld(shop, () -> adoptAlone(shop, settings, draft, effective, decidedOn, by));
    }

    private static Adopted adoptAlone(
            Path shop, Settings settings, DecidedDraft draft, LocalDate effective, LocalDate decidedOn, String by) {
        try {
            PublishedResults.Result newest = newest(shop);
            expectMatch(newest, draft);
            expectNew(shop.resolve(Decisions.FOLDER), draft);
            Ledger ledger = new Reconcile()
                    .reconcile(new ReadExports().read(shop, settings), settings, (int)
                            newest.asOf().toEpochDay())
                    .ledger();
            int day = (int) effective.toEpochDay();
            expectLater(ledger.books().versions(), day);
            PriceBook today = ledger.books().inForce(ledger.asOf());
            PriceBook next = new NextBook().decide(today, draft, day, settings.figures());
            String record = DecisionRecord.text(today, draft, effective, decidedOn, by, runDigest(newest));
            Path file = shop.resolve(BOOKS).resolve(effective + ".csv");
            writeOnce(
                    shop.resolve(Decisions.FOLDER).resolve(effective + ".json"),
                    partial -> Files.writeString(partial, record, StandardCharsets.UTF_8));
            writeOnce(file, partial -> new WritePriceBook().write(next, partial));
            return new Adopted(today, next, file);
        } catch (IOException e) {
            throw new Refusal(ExitCode.CANNOT_WRITE, shop + ": the next price book can't be written: " + e + ".", e);
        }
    }

    private static PublishedResults.Result newest(Path shop) throws IOException {
        Optional<PublishedResults.Result> newest = new PublishedResults(shop.resolve("out")).before(LocalDate.MAX);
        return newest.orElseThrow(() -> new Refusal(
                ExitCode.MISSING,
                shop.resolve("out") + ": found no results, expected those of the night that drafted the"
                        + " workbook. Run benchtrue nightly first."));
    }

    private static String runDigest(PublishedResults.Result newest) throws IOException {
        return FileDigest.of(newest.folder(), newest.folder().resolve(RunRecord.FILE))
                .sha256();
    }

    private static void expectMatch(PublishedResults.Result newest, DecidedDraft draft) throws IOException {
        String current = FileDigest.of(newest.folder(), newest.folder().resolve(WriteTables.REVISION))
                .sha256();
        if (!current.equals(draft.draft())) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    draft.file() + ": found a draft of another night, expected that of " + newest.asOf()
                            + ", whose figures differ. Decide in the newest workbook. Nothing was written.");
        }
    }

    /** A draft is adopted once; its digest stands in the decisions made on it. */
    private static void expectNew(Path decisions, DecidedDraft draft) throws IOException {
        if (!Files.isDirectory(decisions)) {
            return;
        }
        try (Stream<Path> files = Files.list(decisions)) {
            for (Path file : files.sorted().toList()) {
                if (file.toString().endsWith(".json")
                        && Files.readString(file).contains(draft.draft())
                        && Files.exists(decisions
                                .resolveSibling(BOOKS)
                                .resolve(file.getFileName().toString().replace(".json", ".csv")))) {
                    throw new Refusal(
                            ExitCode.CANNOT_WRITE,
                            draft.file() + ": found this draft adopted already in " + file + ". Nothing was written.");
                }
            }
        }
    }

    private static void expectLater(List<PriceBook> versions, int effective) {
        PriceBook newest = versions.get(versions.size() - 1);
        if (effective <= newest.effective()) {
            throw new Refusal(
                    ExitCode.USAGE,
                    "The newest price book is in force from " + LocalDate.ofEpochDay(newest.effective())
                            + "; the next one must begin after it. Nothing was written.");
        }
    }

    private interface Content {
        void write(Path partial) throws IOException;
    }

    /** Writes beside the name and renames; what stands already must be the same to the byte, else nothing is touched. */
    private static void writeOnce(Path file, Content content) throws IOException {
        OwnerOnly.folder(file.getParent());
        Path partial = file.resolveSibling(file.getFileName() + ".partial");
        try {
            content.write(OwnerOnly.file(partial));
            if (Files.exists(file)) {
                if (Files.mismatch(partial, file) >= 0) {
                    throw new Refusal(
                            ExitCode.CANNOT_WRITE,
                            file + ": found it there with other content; it is never overwritten.");
                }
                return;
            }
            RunFolder.sync(partial);
            Files.move(partial, file, StandardCopyOption.ATOMIC_MOVE);
            RunFolder.sync(file.getParent());
        } finally {
            Files.deleteIfExists(partial);
        }
    }
}
