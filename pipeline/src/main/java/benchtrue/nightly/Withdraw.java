package benchtrue.nightly;

import benchtrue.revision.CarryForward;
import benchtrue.revision.ComingBook;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.PriceBook;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/**
 * Takes an adopted price book back before its first day. What was decided and that it was withdrawn stay on record, and the
 * book's rows move beside them; books for later days that took its rows over have those of the book before again.
 */
public final class Withdraw {
    private static final String KIND = ".withdrawn";

    /**
     * What is taken back.
     *
     * @param effective first day that the book would have had
     * @param withdrawnOn today
     * @param reason why
     */
    public record Request(LocalDate effective, LocalDate withdrawnOn, String by, String reason) {
        int day() {
            return (int) effective.toEpochDay();
        }
    }

    /**
     * Returns where the withdrawn book is kept.
     *
     * @throws Refusal where there is no such book, it is in force, was written by hand or is the only one, or no reason is
     *     given
     */
    public Path withdraw(Path shop, Settings settings, Request request) {
        if (request.reason().isBlank()) {
            throw refused(ExitCode.USAGE, request, "is withdrawn for a reason only; say why with --reason");
        }
        return ShopLock.whileHeld(shop, () -> {
            try {
                return withdrawAlone(shop, settings, request);
            } catch (IOException e) {
                throw BookFiles.cannotWrite(shop, e);
            }
        });
    }

    private static Path withdrawAlone(Path shop, Settings settings, Request request) throws IOException {
        PriceBooks books = AdoptDecisions.books(shop, settings, request.withdrawnOn());
        DecisionFiles files = DecisionFiles.of(shop);
        PriceBook withdrawn = expectComing(books, files, request);
        List<PriceBook> others = books.versions().stream()
                .filter(version -> version.effective() != request.day())
                .toList();
        if (others.isEmpty()) {
            throw refused(ExitCode.USAGE, request, "is the only one; adopt another before it is withdrawn");
        }
        PriceBook before = new PriceBooks(others).inForce(request.day());
        List<ComingBook> later = new Decisions(files, books, Integer.MAX_VALUE).after(request.day());
        BookFiles write = new BookFiles(shop);
        Path record = record(files, request, write);
        Path kept = DecisionRecord.book(record);
        if (Files.exists(kept)) {
            throw refused(
                    ExitCode.USAGE, request, "was not adopted but written by hand; take its file out of price-book");
        }
        write.changed(later, CarryForward.into(withdrawn, before, later));
        if (Files.exists(write.surcharges(request.effective()))) {
            WholeFile.move(
                    write.surcharges(request.effective()), kept.resolveSibling("surcharges-" + kept.getFileName()));
        }
        WholeFile.move(write.book(request.effective()), kept);
        return kept;
    }

    /** Keeps the record; where an earlier try was killed it stands already. */
    private static Path record(DecisionFiles files, Request request, BookFiles write) throws IOException {
        List<String> sittings =
                files.standing(request.day()).stream().map(Sitting::file).toList();
        int number = 1
                + (int) files.withdrawals().stream()
                        .filter(earlier -> earlier.effective() == request.day())
                        .count();
        return sittings.isEmpty()
                ? write.record(request.effective(), KIND, number - 1)
                : write.keep(request.effective(), KIND, DecisionRecord.withdrawal(request, sittings));
    }

    private static PriceBook expectComing(PriceBooks books, DecisionFiles files, Request request) {
        PriceBook book = books.versions().stream()
                .filter(version -> version.effective() == request.day())
                .findFirst()
                .orElseThrow(() -> refused(ExitCode.MISSING, request, "was not found in price-book"));
        if (!request.effective().isAfter(request.withdrawnOn())) {
            throw refused(ExitCode.USAGE, request, "is in force already; a new book for a later day corrects it");
        }
        if (files.sittings().stream().noneMatch(sitting -> sitting.effective() == request.day())) {
            throw refused(
                    ExitCode.USAGE, request, "was not adopted but written by hand; take its file out of price-book");
        }
        return book;
    }

    private static Refusal refused(ExitCode code, Request request, String why) {
        return new Refusal(code, "The price book of " + request.effective() + " " + why + ". Nothing was written.");
    }
}
