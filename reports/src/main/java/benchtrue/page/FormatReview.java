package benchtrue.page;

import benchtrue.charts.Picture;
import benchtrue.charts.Pictures;
import benchtrue.findings.Findings;
import benchtrue.findings.PersonFactor;
import benchtrue.format.Figures;
import benchtrue.format.Glossary;
import benchtrue.nightly.Review;
import benchtrue.shop.Balance;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.Notice;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts a review into the words and figures of its page. */
final class FormatReview {
    /** Pictures of single repairs on the page; a telephone has to load them all. */
    private static final int MOST_SINGLE = 12;

    private final PageFormatter told;

    FormatReview(Review review) {
        told = new PageFormatter(review);
    }

    ReviewView tell() {
        List<Picture> pictures = Pictures.of(told.review());
        return new ReviewView(
                head(pictures),
                new ReviewView.Answers(
                        new FormatLosses(told).tell(),
                        new FormatChanges(told).tell(),
                        new FormatGifts(told).tell(),
                        new FormatCalls(told).tell(),
                        new FormatBenchHour(told).tell(pictures)),
                shown(pictures).parallelStream().map(FormatReview::illustration).toList(),
                more(pictures),
                new FormatBreakdowns(told.figures()).standing(told.review().breakdowns()),
                new FormatHourMonths(told).tell(),
                new FormatGifts(told).all(),
                new FormatRepairs(told).tell(),
                new FormatJobs(told).tell(),
                new FormatBooks(told.review()).quotes(),
                new FormatCalls(told).all(),
                new FormatCalls(told).more(),
                new FormatCalls(told).open(),
                new FormatWeeks(told).tell(),
                new FormatRestorations(told).tell(),
                people(),
                told.review().balances().stream().map(this::balance).toList(),
                doubts(),
                restated(),
                Glossary.ENTRIES.stream()
                        .map(entry -> new ReviewView.Word(entry.word(), entry.plain()))
                        .toList(),
                Cautions.of(told));
    }

    /** Pictures of the whole shop, and of single repairs the first, which matter most. */
    private static List<Picture> shown(List<Picture> pictures) {
        List<Picture> shown = new ArrayList<>();
        int single = 0;
        for (Picture picture : pictures) {
            if (picture.scope() == Picture.Scope.SHOP || ++single <= MOST_SINGLE) {
                shown.add(picture);
            }
        }
        return shown;
    }

    private String more(List<Picture> pictures) {
        int left = pictures.size() - shown(pictures).size();
        return left == 0
                ? ""
                : told.count(left, "more picture of a single repair stands", "more pictures of single repairs stand")
                        + " in the folder charts, as jobs-\u2026.svg and .png.";
    }

    private ReviewView.Head head(List<Picture> pictures) {
        Review review = told.review();
        return new ReviewView.Head(
                "Bench review, " + told.figures().day(review.ledger().asOf()),
                first(),
                pictures.get(0).title() + "." + together(),
                told.count(review.ledger().tickets().size(), "ticket", "tickets") + ", "
                        + told.count(review.ledger().lines().size(), "quoted line", "quoted lines") + ", "
                        + told.count(review.ledger().time().size(), "time entry", "time entries") + ". "
                        + String.join(" ", review.answers().books()),
                told.review().costs().shop().leftOut(),
                review.before().map(day -> "../" + day + "/review.html").orElse(""),
                review.before()
                        .map(day -> told.figures().day((int) day.toEpochDay()))
                        .orElse(""));
    }

    /** What must be read before all else: what was not read, how much paid time is not in the log, and what figures allow for. */
    private String first() {
        return Stream.of(
                        told.review().answers().notRead().orElse(""),
                        new FormatBenchHour(told).warning(),
                        String.join(" ", told.review().answers().allowedFor()))
                .filter(sentence -> !sentence.isEmpty())
                .collect(Collectors.joining(" "));
    }

    /** What the under-quoted repairs lose together; empty where none surely does. */
    private String together() {
        Findings findings = told.review().findings();
        return findings.lostAtMost() <= 0
                ? ""
                : " Together the under-quoted lose "
                        + told.figures().moneyRange(findings.lostAtLeast(), findings.lostAtMost()) + " a year.";
    }

    static String pictureId(Picture picture) {
        return "picture-" + picture.name();
    }

    static ReviewView.Illustration illustration(Picture picture) {
        return new ReviewView.Illustration(
                pictureId(picture),
                picture.title(),
                picture.note(),
                picture.figure(Picture.Sheet.WIDE),
                picture.figure(Picture.Sheet.NARROW),
                "charts/" + picture.name() + ".svg");
    }

    /** In the order of names: no ranking. */
    private List<ReviewView.Person> people() {
        return told.review().findings().people().stream()
                .sorted(Comparator.comparing(PersonFactor::role).thenComparing(PersonFactor::name))
                .map(person -> new ReviewView.Person(
                        person.role() == PersonFactor.Role.TECHNICIAN ? "at the bench" : "writing quotes",
                        person.name(),
                        told.figures().count(person.jobs()),
                        told.figures().count(person.repairTypes()),
                        told.figures().ratio(person.factor()),
                        told.figures().ratio(person.lower()) + " to "
                                + told.figures().ratio(person.upper())))
                .toList();
    }

    private List<ReviewView.Doubt> doubts() {
        List<ReviewView.Doubt> doubts = new ArrayList<>();
        told.review()
                .setAside()
                .forEach((table, rows) -> doubts.add(new ReviewView.Doubt(
                        "Rows of " + table + " set aside, with every reason",
                        told.figures().count(rows),
                        "set-aside/" + table + ".csv")));
        told.review()
                .answers()
                .unread()
                .forEach(part -> doubts.add(new ReviewView.Doubt(
                        "Hours that could not be read: " + part.what(),
                        told.figures().hours((long) part.unreadSeconds()),
                        "beside " + told.figures().hours((long) part.readSeconds()) + " that could")));
        for (Notice notice : told.review().notices()) {
            doubts.add(new ReviewView.Doubt(
                    notice.words(), told.figures().count(notice.count()), String.join(", ", notice.examples())));
        }
        return doubts;
    }

    private List<ReviewView.Restated> restated() {
        return told.review().restatements().stream()
                .map(row -> new ReviewView.Restated(
                        told.figures().month(row.month()),
                        row.figure().replace('_', ' '),
                        row.sealed().isEmpty() ? Figures.UNKNOWN : row.sealed(),
                        row.now().isEmpty() ? Figures.UNKNOWN : row.now(),
                        String.join("; ", row.causes())))
                .toList();
    }

    private ReviewView.BalanceRow balance(Balance balance) {
        List<String> terms = new ArrayList<>();
        for (Balance.Term term : balance.terms()) {
            if (term.amount() != 0) {
                terms.add(term.name() + " " + amount(balance.unit(), term.amount()));
            }
        }
        return new ReviewView.BalanceRow(
                balance.name(), amount(balance.unit(), balance.read()), String.join(" + ", terms));
    }

    private String amount(String unit, long amount) {
        return switch (unit) {
            case "seconds" -> told.figures().number(new BigDecimal(Hours.text(amount)).doubleValue(), 2) + "\u00a0h";
            case "ten-thousandths" -> told.figures().number(Money.units(amount), 2);
            default -> told.figures().count(amount);
        };
    }
}
