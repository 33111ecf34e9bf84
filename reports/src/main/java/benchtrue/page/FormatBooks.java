package benchtrue.page;

import benchtrue.answers.PriceList;
import benchtrue.answers.QuoteTable;
import benchtrue.format.Figures;
import benchtrue.nightly.Review;
import benchtrue.shop.Absent;
import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import java.util.ArrayList;
import java.util.List;

/** Puts the price books in force and to come into the words of price lists, quote tables and explained prices. */
final class FormatBooks {
    private final Review review;
    private final Figures figures;

    FormatBooks(Review review) {
        this.review = review;
        figures = review.settings().figures();
    }

    BookViews.Prices prices() {
        return new BookViews.Prices(
                "Price list", review.priceLists().stream().map(this::sheet).toList());
    }

    private BookViews.PriceSheet sheet(PriceList list) {
        return new BookViews.PriceSheet(
                "Price list from " + figures.day(list.book().effective()),
                list.before().isEmpty() ? list.note() : changed(list.changes()) + " " + list.note(),
                list.before().map(this::until).orElse(""),
                "From " + figures.day(list.book().effective()),
                list.families().stream()
                        .map(family -> new BookViews.Family(
                                name(family.name()),
                                family.rows().stream().map(this::price).toList()))
                        .toList());
    }

    private String changed(long changes) {
        return changes == 0
                ? "Nothing changes."
                : figures.count(changes, "repair changes; it is", "repairs change; they are") + " marked.";
    }

    private String until(PriceBook before) {
        return "Until then, since " + figures.day(before.effective());
    }

    private BookViews.Price price(PriceList.Row row) {
        boolean gone = row.change() == PriceList.Change.NO_LONGER_OFFERED;
        return new BookViews.Price(
                title(row.repair()),
                row.before().map(type -> figures.quote(type.bookSeconds())).orElse(""),
                row.before().map(type -> figures.price(type.bookLabour())).orElse(""),
                gone ? "" : figures.quote(row.repair().bookSeconds()),
                gone ? "" : figures.price(row.repair().bookLabour()),
                switch (row.change()) {
                    case SAME -> "";
                    case CHANGED -> "changed";
                    case NEW -> "new";
                    case NO_LONGER_OFFERED -> "no longer offered";
                });
    }

    BookViews.Quotes quotes() {
        return new BookViews.Quotes(
                "Quote table, " + figures.day(review.ledger().asOf()),
                String.join(" ", review.answers().books()),
                review.quoteTable().families().stream()
                        .map(family -> new BookViews.QuoteFamily(
                                name(family.name()),
                                PageFormatter.sentence(String.join("; ", family.longer())),
                                family.rows().stream().map(this::quote).toList()))
                        .toList());
    }

    private BookViews.Quote quote(QuoteTable.Row row) {
        return new BookViews.Quote(
                title(row.repair()),
                row.repair().repairType(),
                row.now().map(type -> figures.quote(type.bookSeconds())).orElse("not yet in the book"),
                row.now().map(type -> figures.price(type.bookLabour())).orElse(""),
                coming(row),
                row.hoursThatFit().stream()
                        .map(seconds -> Absent.has(seconds) ? figures.quote(seconds) : Figures.UNKNOWN)
                        .toList(),
                row.lookFor());
    }

    private List<String> coming(QuoteTable.Row row) {
        return row.coming().stream()
                .map(from -> "from " + figures.day(from.effective()) + ": " + quote(from.repair()))
                .toList();
    }

    private String quote(RepairType type) {
        return figures.quote(type.bookSeconds()) + ", " + figures.price(type.bookLabour());
    }

    BookViews.Explained explained() {
        List<BookViews.Explanation> repairs = new ArrayList<>();
        review.quoteTable().families().stream()
                .flatMap(family -> family.rows().stream())
                .forEach(row -> repairs.add(explanation("price-" + (repairs.size() + 1), row)));
        return new BookViews.Explained(
                "What a repair costs, and why, " + figures.day(review.ledger().asOf()), repairs);
    }

    private BookViews.Explanation explanation(String id, QuoteTable.Row row) {
        return new BookViews.Explanation(
                id,
                title(row.repair()),
                row.now().map(this::labour).orElse("Not yet offered"),
                row.coming().stream()
                        .map(from -> "From " + figures.day(from.effective()) + ": " + labour(from.repair()))
                        .toList(),
                done(row.repair()),
                rests(row));
    }

    private String labour(RepairType type) {
        return figures.price(type.bookLabour()) + " for " + figures.quote(type.bookSeconds()) + " at the bench";
    }

    private List<String> done(RepairType type) {
        List<String> done = new ArrayList<>();
        done.add("The bench work of this repair"
                + (type.family().isBlank() ? "" : " (" + type.family().replace('-', ' ') + ")")
                + " on your instrument.");
        if (Absent.has(type.leastSeconds())) {
            done.add("Less than " + figures.quote(type.leastSeconds())
                    + " would not be safe: steps such as gluing, curing and clamping cannot be hurried.");
        }
        if (!type.hazards().isEmpty()) {
            done.add("Safe handling is part of the hours: "
                    + String.join(", ", type.hazards()).replace('-', ' ') + ".");
        }
        if (type.freeWeeks() > 0) {
            done.add("Adjustments are free for " + figures.count(type.freeWeeks(), "week", "weeks") + " afterwards.");
        }
        return done;
    }

    /** No word of wages or margins: what the customer may know is how long such jobs take. */
    private String rests(QuoteTable.Row row) {
        if (row.jobs() == 0
                || row.now().isEmpty()
                || !Absent.has(row.hoursThatFit().get(0))) {
            return "Too little is on record of this kind of work to go by; the hours are the bench's estimate.";
        }
        return "We time our work. Of " + figures.count(row.jobs(), "finished job", "finished jobs")
                + " of this kind, " + figures.count(row.fitting()) + " took no longer than these hours. Instruments"
                + " differ: some take less and some more.";
    }

    private static String title(RepairType type) {
        return type.title().isBlank() ? type.repairType() : type.title();
    }

    private static String name(String family) {
        return family.isBlank() ? "Other repairs" : PageFormatter.sentence(family.replace('-', ' '));
    }
}
