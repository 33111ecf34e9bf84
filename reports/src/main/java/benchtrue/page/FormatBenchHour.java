package benchtrue.page;

import benchtrue.charts.Picture;
import benchtrue.costing.BenchHour;
import benchtrue.costing.LoggedShare;
import benchtrue.costing.ShopRates;
import benchtrue.revision.LastChange;
import benchtrue.shop.PriceBook;
import java.util.List;

/** Fifth answer: what a bench hour costs and earns, and how much paid time reached the log. */
final class FormatBenchHour {
    /** Where the months by the day worked stand. */
    static final String WORKED = "bench-worked";

    /** Where the months of finished jobs stand. */
    static final String FINISHED = "bench-finished";

    private final PageFormatter told;
    private final BenchHour hour;
    private final LoggedShare logged;

    FormatBenchHour(PageFormatter told) {
        this.told = told;
        hour = told.review().costs().shop().benchHour();
        logged = told.review().costs().shop().loggedShare();
    }

    /**
     * Returns what an hour costs and earns.
     *
     * @param pictures the evidence, which facts may link to
     */
    List<ReviewView.Fact> tell(List<Picture> pictures) {
        ShopRates rates = hour.rates();
        String span =
                told.figures().month(hour.from()) + " to " + told.figures().month(hour.to());
        return List.of(
                new ReviewView.Fact(
                        "Costs",
                        "#" + WORKED,
                        price(hour.cost().total()),
                        "an hour sold, " + span + ", all costs on it"),
                new ReviewView.Fact(
                        "Earns",
                        "#" + FINISHED,
                        price(rates.earned()),
                        "labour for an hour taken; posted " + price(rates.posted()) + ", charged for an hour quoted "
                                + price(rates.charged())),
                new ReviewView.Fact(
                        "Must bring",
                        "#" + FINISHED,
                        price(rates.breakEven()),
                        "labour for an hour quoted, to break even; " + price(rates.forTarget())
                                + " for the target margin"),
                new ReviewView.Fact(
                        "Result",
                        "#" + FINISHED,
                        told.figures().money(hour.result()),
                        "of those months, all costs paid" + safety()),
                new ReviewView.Fact(
                        "Paid time in the log",
                        "#" + WORKED,
                        told.figures().percent(logged.share()),
                        "logged hours of hours paid" + sold()),
                lastBook(pictures));
    }

    /** Returns what must be read before all else, where too little of the paid time reached the log. */
    String warning() {
        return logged.opensTheReview()
                ? "Only " + told.figures().percent(logged.share()) + " of the hours paid reached the log ("
                        + told.figures().percent(logged.least())
                        + " is the least): every repair looks cheaper here than it is."
                : "";
    }

    private String sold() {
        double share = logged.soldShare();
        return Double.isNaN(share) ? "" : "; sold: " + told.figures().percent(share);
    }

    private String safety() {
        double share = hour.marginOfSafety();
        return Double.isNaN(share)
                ? ""
                : share < 0
                        ? "; " + told.figures().percent(-share) + " too few hours sold to break even"
                        : "; sold hours may fall by " + told.figures().percent(share) + " before it is lost";
    }

    private String price(long rate) {
        return told.figures().rate(rate);
    }

    private ReviewView.Fact lastBook(List<Picture> pictures) {
        PriceBook book =
                told.review().ledger().books().inForce(told.review().ledger().asOf());
        String since =
                told.review().revision().lastChange().map(LastChange::sentence).orElse("in force since");
        String href = pictures.stream()
                .filter(picture -> picture.name().equals(Picture.LAST_CHANGE))
                .map(picture -> "#" + FormatReview.pictureId(picture))
                .findFirst()
                .orElse("");
        return new ReviewView.Fact("Price book", href, told.figures().day(book.effective()), since);
    }
}
