package benchtrue.page;

import benchtrue.costing.Gift;
import java.util.List;

/** Third answer: what was given away in the year up to the as-of date, and to whom. */
final class TellGifts {
    private static final int MOST = 6;
    private final Told told;

    TellGifts(Told told) {
        this.told = told;
    }

    ReviewView.Gifts tell() {
        List<Gift> gifts = told.review().costs().shop().gifts();
        String span =
                "In the year up to " + told.figures().day(told.review().ledger().asOf());
        if (gifts.isEmpty()) {
            return new ReviewView.Gifts(List.of(), span + " nothing is recorded as given away.");
        }
        int rest = gifts.size() - MOST;
        return new ReviewView.Gifts(
                gifts.stream().limit(MOST).map(this::gift).toList(),
                span + "; bench time at the posted "
                        + told.figures().price(told.review().costs().shopRate()) + " an hour."
                        + (rest > 0
                                ? " " + told.count(rest, "smaller row is", "smaller rows are") + " left out."
                                : ""));
    }

    private ReviewView.Gift gift(Gift gift) {
        return new ReviewView.Gift(
                gift.what() + toWhom(gift),
                told.count(gift.times(), "time", "times")
                        + (gift.seconds() > 0 ? ", " + told.figures().hours(gift.seconds()) : ""),
                told.figures().money(gift.worth()));
    }

    private static String toWhom(Gift gift) {
        return switch (gift.toWhom()) {
            case "customer" -> ", to customers";
            case "trade" -> gift.what().contains("trade") ? "" : ", to the trade";
            case "maker-warranty" -> ", to makers under warranty";
            case "goodwill" -> gift.what().contains("goodwill") ? "" : ", as goodwill";
            case "house" -> ", to the house";
            default -> ", to " + gift.toWhom();
        };
    }
}
