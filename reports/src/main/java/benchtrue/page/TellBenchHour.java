package benchtrue.page;

import benchtrue.costing.BenchHour;
import benchtrue.costing.LoggedShare;
import benchtrue.costing.ShopRates;
import benchtrue.revision.LastChange;
import benchtrue.shop.PriceBook;
import java.util.List;

/** Fifth answer: what a bench hour costs and earns, and how much paid time reached the log. */
final class TellBenchHour {
    private final Told told;
    private final BenchHour hour;
    private final LoggedShare logged;

    TellBenchHour(Told told) {
        this.told = told;
        hour = told.review().costs().shop().benchHour();
        logged = told.review().costs().shop().loggedShare();
    }

    List<ReviewView.Fact> tell() {
        ShopRates rates = hour.rates();
        String span =
                told.figures().month(hour.from()) + " to " + told.figures().month(hour.to());
        return List.of(
                new ReviewView.Fact("Costs", price(hour.cost().total()), "an hour sold, " + span + ", all costs on it"),
                new ReviewView.Fact(
                        "Earns",
                        price(rates.earned()),
                        "labour for an hour taken; posted " + price(rates.posted()) + ", charged for an hour quoted "
                                + price(rates.charged())),
                new ReviewView.Fact(
                        "Must bring",
                        price(rates.breakEven()),
                        "labour for an hour quoted, to break even; " + price(rates.forTarget())
                                + " for the target margin"),
                new ReviewView.Fact(
                        "Result", told.figures().money(hour.result()), "of those months, all costs paid" + safety()),
                new ReviewView.Fact(
                        "Paid time in the log",
                        told.figures().percent(logged.share()),
                        "logged hours of hours paid" + sold()),
                lastBook());
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

    private ReviewView.Fact lastBook() {
        PriceBook book =
                told.review().ledger().books().inForce(told.review().ledger().asOf());
        String since =
                told.review().revision().lastChange().map(LastChange::sentence).orElse("in force since");
        return new ReviewView.Fact("Price book", told.figures().day(book.effective()), since);
    }
}
