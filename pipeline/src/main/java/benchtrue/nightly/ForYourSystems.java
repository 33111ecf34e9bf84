package benchtrue.nightly;

import benchtrue.format.Figures;
import benchtrue.intake.ForeignBook;
import benchtrue.revision.ComingBook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Writes each adopted book to come as the quoting system wrote its own, ready to be imported, into {@code for-your-systems};
 * nothing where the shop's books are all in the program's own words or none is to come.
 */
final class ForYourSystems implements Report {
    static final String FOLDER = "for-your-systems";

    private final Path shop;

    ForYourSystems(Path shop) {
        this.shop = shop;
    }

    @Override
    public void write(Review review, Path folder) throws IOException {
        List<ComingBook> coming = review.revision().coming();
        Optional<Path> like = coming.isEmpty() ? Optional.empty() : ForeignBook.newest(shop, review.settings());
        if (like.isEmpty()) {
            return;
        }
        Path into = OwnerOnly.folder(folder.resolve(FOLDER));
        List<String> told = new ArrayList<>();
        for (ComingBook book : coming) {
            told.add(told(book, like.get(), review, into));
        }
        Files.writeString(into.resolve("about.txt"), String.join("\n", told) + "\n", StandardCharsets.UTF_8);
    }

    private String told(ComingBook coming, Path like, Review review, Path into) {
        Figures figures = review.settings().figures();
        String from = figures.day(coming.book().effective());
        Optional<Path> written = ForeignBook.write(shop, review.settings(), coming.book(), into);
        String conditions = coming.book().surcharges().isEmpty()
                ? ""
                : " What is added on a condition (" + coming.book().surcharges().size()
                        + " of its lines) has no place in such a file: enter it by hand, from the rows with + of"
                        + " price-list.html.";
        return written.map(file -> file.getFileName() + ": the price book from " + from + ", written as "
                                + like.getFileName()
                                + " is, to be imported where that came from. Columns that Benchtrue does not"
                                + " read are as they were there; import it no sooner than it is in force.")
                        .orElse("The price book from " + from + " could not be written as " + like.getFileName()
                                + " is: that file is a workbook, or has cells that can't be put back as they stand. Enter the"
                                + " changed rows of price-list.html by hand.")
                + conditions;
    }
}
