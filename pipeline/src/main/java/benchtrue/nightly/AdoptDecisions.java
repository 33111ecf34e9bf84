package benchtrue.nightly;

import benchtrue.format.Figures;
import benchtrue.intake.ReadExports;
import benchtrue.reconcile.Ledger;
import benchtrue.reconcile.Reconcile;
import benchtrue.revision.CarryForward;
import benchtrue.revision.ComingBook;
import benchtrue.revision.DecidedDraft;
import benchtrue.revision.Decision;
import benchtrue.revision.NextBook;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.PriceBook;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.Refusal;
import benchtrue.shop.RepairType;
import benchtrue.tables.WriteTables;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes the owner's decisions a price book: the record in {@code decisions/} first, then books for later days that take the
 * decided rows over, last {@code price-book/<effective>.csv}. So a decision counts only once its book stands; a book in
 * force is never rewritten, and one that is still to come may be decided in several sittings.
 */
public final class AdoptDecisions {
    /**
     * What was adopted.
     *
     * @param before the version that it began from
     * @param next the adopted version
     * @param file where it stands
     * @param overridden what later books have otherwise, in words
     */
    public record Adopted(PriceBook before, PriceBook next, Path file, List<String> overridden) {
        public Adopted {
            overridden = List.copyOf(overridden);
        }
    }

    /**
     * Adopts a decided draft.
     *
     * @throws Refusal where the draft is of other results than the newest, does not add up or has a row that was decided on
     *     it already; where the day is not after that of deciding, has a book in force or one written by hand; and where a
     *     later book overrides a row that nobody confirmed
     */
    public Adopted adopt(Path shop, Settings settings, DecidedDraft draft, Adoption adoption) {
        adoption.expectDay();
        expectNoRule(settings, adoption);
        return ShopLock.whileHeld(shop, () -> {
            try {
                return adoptAlone(shop, settings, draft, adoption);
            } catch (IOException e) {
                throw BookFiles.cannotWrite(shop, e);
            }
        });
    }

    private static Adopted adoptAlone(Path shop, Settings settings, DecidedDraft draft, Adoption adoption)
            throws IOException {
        PublishedResults.Result newest = newest(shop);
        expectMatch(newest, draft);
        Figures figures = settings.figures();
        Ledger ledger = ledger(shop, settings, newest.asOf());
        PriceBooks books = ledger.books();
        DecisionFiles files = DecisionFiles.of(shop);
        Decisions decisions = new Decisions(files, books, Integer.MAX_VALUE);
        expectFree(books, files, adoption);
        PriceBook before = books.inForce(adoption.day());
        PriceBook next = new NextBook(before, books.newest(), decisions.onDraft(draft.draft()), figures)
                .decide(draft, adoption.day());
        List<ComingBook> later = decisions.after(adoption.day());
        List<PriceBook> carried = CarryForward.into(before, next, later);
        List<String> overridden = overridden(draft, next, carried, figures);
        if (!overridden.isEmpty() && adoption.later() == Adoption.LaterBook.ASK) {
            throw new Refusal(
                    ExitCode.USAGE,
                    "Later price books have otherwise what is decided for " + figures.day(adoption.day()) + ":\n  "
                            + String.join("\n  ", overridden)
                            + "\nAdopt with --confirm if they are to hold from their day on. Nothing was written.");
        }
        BookFiles write = new BookFiles(shop);
        if (!ledger.hasBook()) {
            keepUsual(books, write);
        }
        String record = DecisionRecord.sitting(before, next, draft, adoption, runDigest(newest));
        write.keep(adoption.effective(), "", record);
        write.changed(later, carried);
        return new Adopted(before, next, write.write(next), overridden);
    }

    /** A rule that says how numbers of some file are read would change what the adopted book says. */
    private static void expectNoRule(Settings settings, Adoption adoption) {
        String file = adoption.effective() + ".csv";
        settings.files().stream()
                .filter(rule -> rule.fits(file)
                        && rule.columns().stream().allMatch(pair -> pair.text().equalsIgnoreCase(pair.key())))
                .findFirst()
                .ifPresent(rule -> {
                    throw new Refusal(
                            ExitCode.SETTINGS,
                            ReadSettings.FILE + ", line " + rule.line() + ": found a rule for \"" + rule.name()
                                    + "\" that fits price-book/" + file + " too, which Benchtrue writes in its own way."
                                    + " Make its name narrower. Nothing was written.");
                });
    }

    static PriceBooks books(Path shop, Settings settings, LocalDate asOf) {
        return ledger(shop, settings, asOf).books();
    }

    private static Ledger ledger(Path shop, Settings settings, LocalDate asOf) {
        return new Reconcile()
                .reconcile(new ReadExports().read(shop, settings), settings, (int) asOf.toEpochDay())
                .ledger();
    }

    /** What was usually quoted stood for a book till now; kept as files, it goes on saying what was in force before. */
    private static void keepUsual(PriceBooks books, BookFiles write) throws IOException {
        for (PriceBook book : books.versions()) {
            write.write(book);
        }
    }

    /** A book that is in force, or that somebody wrote by hand, is never rewritten. */
    private static void expectFree(PriceBooks books, DecisionFiles files, Adoption adoption) {
        int today = (int) adoption.decidedOn().toEpochDay();
        Optional<PriceBook> newestInForce = books.versions().stream()
                .filter(version -> version.effective() <= today && version.effective() >= adoption.day())
                .findFirst();
        if (newestInForce.isPresent()) {
            throw new Refusal(
                    ExitCode.USAGE,
                    "The price book of "
                            + LocalDate.ofEpochDay(newestInForce.get().effective())
                            + " is in force already; a new book for a later day corrects it. Nothing was written.");
        }
        boolean stands = books.versions().stream().anyMatch(version -> version.effective() == adoption.day());
        if (stands && files.standing(adoption.day()).isEmpty()) {
            throw new Refusal(
                    ExitCode.CANNOT_WRITE,
                    "The price book of " + adoption.effective() + " was not adopted but written by hand; it is never"
                            + " overwritten. Name another day. Nothing was written.");
        }
    }

    private static List<String> overridden(DecidedDraft draft, PriceBook next, List<PriceBook> later, Figures figures) {
        List<String> overridden = new ArrayList<>();
        for (Decision decision : draft.decided()) {
            RepairType decided = next.type(decision.repairType()).orElseThrow();
            for (PriceBook book : later) {
                Optional<RepairType> then = book.type(decision.repairType());
                if (then.isPresent() && !then.get().quotesAs(decided)) {
                    overridden.add(decision.title() + ": " + quote(decided, figures) + ", but from "
                            + figures.day(book.effective()) + " " + quote(then.get(), figures));
                    break;
                }
            }
        }
        return overridden;
    }

    private static String quote(RepairType type, Figures figures) {
        return figures.quote(type.bookSeconds()) + " at " + figures.price(type.bookLabour());
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
}
