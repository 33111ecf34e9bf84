package benchtrue.page;

import benchtrue.costing.Gift;
import benchtrue.costing.Given;
import java.util.List;
import java.util.stream.IntStream;

/** Third answer: what was given away in the year up to the as-of date, and to whom. */
final class FormatGifts {
    private static final int MOST = 6;
    private static final int MOST_TIMES = 25;
    private final PageFormatter told;

    FormatGifts(PageFormatter told) {
        this.told = told;
    }

    ReviewView.Gifts tell() {
        List<Gift> gifts = told.review().answers().given();
        String span =
                "In the year up to " + told.figures().day(told.review().ledger().asOf());
        if (gifts.isEmpty()) {
            return new ReviewView.Gifts(List.of(), span + " nothing is recorded as given away.");
        }
        int rest = gifts.size() - MOST;
        return new ReviewView.Gifts(
                IntStream.range(0, Math.min(MOST, gifts.size()))
                        .mapToObj(i -> gift(gifts.get(i), i))
                        .toList(),
                span + "; bench time at the posted "
                        + told.figures().price(told.review().costs().shopRate()) + " an hour."
                        + (rest > 0
                                ? " " + told.count(rest, "smaller row stands", "smaller rows stand")
                                        + " among the figures."
                                : ""));
    }

    /** Returns each time, for the figures. */
    List<ReviewView.GiftList> all() {
        List<Gift> gifts = told.review().answers().given();
        return IntStream.range(0, gifts.size())
                .mapToObj(i -> list(gifts.get(i), i))
                .toList();
    }

    private ReviewView.GiftList list(Gift gift, int number) {
        return new ReviewView.GiftList(
                id(number),
                named(gift),
                gift.times() <= MOST_TIMES
                        ? told.count(gift.times(), "time", "times")
                        : "the " + told.figures().count(MOST_TIMES) + " largest of "
                                + told.count(gift.times(), "time", "times"),
                gift.rows().stream().limit(MOST_TIMES).map(this::given).toList());
    }

    private ReviewView.Given given(Given given) {
        return new ReviewView.Given(
                told.review().ledger().tickets().ticket(given.ticket()),
                told.label(given.repairType()),
                given.seconds() > 0 ? told.figures().hours(given.seconds()) : "no hours of its own",
                told.figures().price(given.worth()));
    }

    private static String id(int number) {
        return "given-" + (number + 1);
    }

    private static String named(Gift gift) {
        return PageFormatter.sentence(gift.what() + toWhom(gift));
    }

    private ReviewView.Gift gift(Gift gift, int number) {
        return new ReviewView.Gift(
                named(gift),
                "#" + id(number),
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
