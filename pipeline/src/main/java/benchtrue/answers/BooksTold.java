package benchtrue.answers;

import benchtrue.format.Figures;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.ComingBook;
import benchtrue.revision.Revision;
import benchtrue.shop.Absent;
import java.util.ArrayList;
import java.util.List;

/** Which price book is in force, and which are to come, in words. */
final class BooksTold {
    private BooksTold() {}

    /** Returns a sentence on the book in force and one on each that is to come, the earliest first. */
    static List<String> of(Ledger ledger, Revision revision, Figures figures) {
        List<String> told = new ArrayList<>();
        told.add(
                ledger.hasBook()
                        ? "In force: the price book from "
                                + figures.day(
                                        ledger.books().inForce(ledger.asOf()).effective()) + "."
                        : "There is no price book: what was usually quoted for each repair stands for it.");
        revision.coming().forEach(coming -> told.add(coming(coming, figures)));
        return told;
    }

    private static String coming(ComingBook coming, Figures figures) {
        String from = "in force from " + figures.day(coming.book().effective());
        return Absent.has(coming.decidedOn())
                ? "To come: a price book with " + figures.count(coming.decided().size(), "repair", "repairs")
                        + " decided on " + figures.day(coming.decidedOn()) + ", " + from + "."
                : "To come: a price book that was not adopted but written by hand, " + from + ".";
    }
}
