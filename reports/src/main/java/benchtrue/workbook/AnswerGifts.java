package benchtrue.workbook;

import benchtrue.costing.Gift;
import benchtrue.nightly.Review;
import benchtrue.shop.Figures;
import java.util.List;

/** Third answer: what was given away in the year up to the as-of date, and to whom. */
final class AnswerGifts {
    private final Review review;
    private final Figures figures;

    AnswerGifts(Review review, Figures figures) {
        this.review = review;
        this.figures = figures;
    }

    void write(Flow flow) {
        List<Gift> gifts = review.costs().shop().gifts();
        String span = "In the year up to " + figures.day(review.ledger().asOf());
        flow.title("3. What was given away, and to whom");
        if (gifts.isEmpty()) {
            flow.sentence(span + " nothing is recorded as given away.");
            return;
        }
        flow.headings(List.of("What", "Who pays the ticket", "Times", "Bench hours", "Worth"), 0, 1);
        int first = flow.row() + 1;
        gifts.forEach(gift -> flow.next()
                .text(gift.what(), Look.Kind.WRAPPED)
                .text(gift.toWhom().replace('-', ' '))
                .number(gift.times(), Look.Kind.COUNT)
                .number(gift.seconds() > 0 ? Amounts.hours(gift.seconds()) : Double.NaN, Look.Kind.HOURS)
                .number(Amounts.money(gift.worth()), Look.Kind.WHOLE_MONEY));
        together(flow, gifts, first);
        flow.sentence(span + "; bench time at the posted "
                + figures.price(review.costs().shopRate()) + " an hour.");
    }

    private static void together(Flow flow, List<Gift> gifts, int first) {
        int last = flow.row();
        flow.next()
                .text("Together", Look.Kind.TOTAL_WORDS)
                .skip()
                .formula(
                        "SUM(C" + first + ":C" + last + ")",
                        gifts.stream().mapToLong(Gift::times).sum(),
                        Look.Kind.TOTAL_COUNT)
                .formula(
                        "SUM(D" + first + ":D" + last + ")",
                        Amounts.hours(gifts.stream().mapToLong(Gift::seconds).sum()),
                        Look.Kind.TOTAL)
                .formula(
                        "SUM(E" + first + ":E" + last + ")",
                        Amounts.money(gifts.stream().mapToLong(Gift::worth).sum()),
                        Look.Kind.TOTAL_COUNT);
    }
}
