package benchtrue.nightly;

import benchtrue.revision.ComingBook;
import benchtrue.shop.ExitCode;
import benchtrue.shop.PriceBook;
import benchtrue.shop.Refusal;
import benchtrue.tables.WritePriceBook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** Writes price books and the records of what was decided, each whole or not at all. */
final class BookFiles {
    private static final String BOOKS = "price-book";
    private static final String SURCHARGES = "surcharges";

    private final Path shop;

    BookFiles(Path shop) {
        this.shop = shop;
    }

    Path book(LocalDate effective) {
        return shop.resolve(BOOKS).resolve(effective + ".csv");
    }

    Path surcharges(LocalDate effective) {
        return shop.resolve(SURCHARGES).resolve(effective + ".csv");
    }

    /** Writes a book; one whose first day is still to come takes the place of what it was before. */
    Path write(PriceBook book) throws IOException {
        Path file = book(LocalDate.ofEpochDay(book.effective()));
        // Before the book: without it they do not count.
        if (!book.surcharges().isEmpty() || Files.isDirectory(shop.resolve(SURCHARGES))) {
            WholeFile.write(
                    surcharges(LocalDate.ofEpochDay(book.effective())),
                    partial -> new WritePriceBook().surcharges(book, partial));
        }
        WholeFile.write(file, partial -> new WritePriceBook().write(book, partial));
        return file;
    }

    /** Writes the later books that changed, the last one first, so that none ever takes over what the one before lacks. */
    void changed(List<ComingBook> was, List<PriceBook> is) throws IOException {
        for (int i = is.size() - 1; i >= 0; i--) {
            if (!is.get(i).equals(was.get(i).book())) {
                write(is.get(i));
            }
        }
    }

    /**
     * Keeps a record under the first number that is free, and returns it. One that says the same stands already where an
     * earlier try was killed.
     *
     * @param kind what its name has after the day
     */
    Path keep(LocalDate effective, String kind, String record) throws IOException {
        for (int number = 1; ; number++) {
            Path file = record(effective, kind, number);
            if (!Files.exists(file)) {
                WholeFile.write(file, record);
                return file;
            }
            if (Files.readString(file, StandardCharsets.UTF_8).equals(record)) {
                return file;
            }
        }
    }

    /** Returns the file of a record, numbered from 1: the first has no number in its name. */
    Path record(LocalDate effective, String kind, int number) {
        String counted = number == 1 ? "" : "." + number;
        return shop.resolve(DecisionFiles.FOLDER).resolve(effective + kind + counted + DecisionFiles.ENDING);
    }

    static Refusal cannotWrite(Path shop, IOException e) {
        return new Refusal(ExitCode.CANNOT_WRITE, shop + ": the price book can't be written: " + e + ".", e);
    }
}
