package benchtrue.breakdown;

import benchtrue.settings.AskedQuestion;
import benchtrue.settings.Disclosure;
import benchtrue.shop.Absent;
import benchtrue.shop.Refusal;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Understands a question, or refuses it with what was expected and the nearest known name. */
public final class ParseQuestion {
    private static final int MOST_GROUPS = 3;
    private static final Pattern BACK = Pattern.compile("([1-9][0-9]{0,3}) (day|week|month|year)s?");
    private static final List<Measure> USUAL = List.of(
            Measure.JOBS, Measure.QUOTED, Measure.TAKEN, Measure.LOAD, Measure.RANGE, Measure.MARGIN, Measure.RATE);
    private static final List<Measure> USUAL_ACROSS = List.of(Measure.JOBS, Measure.LOAD);

    private final AskedQuestion asked;
    private final Misunderstood refusals;
    private final int asOf;
    private final Disclosure people;

    /**
     * Takes what was asked.
     *
     * @param asOf the as-of date of the result that is asked, from which "12 months" count back
     * @param people whether figures about people are shown
     */
    public ParseQuestion(AskedQuestion asked, int asOf, Disclosure people) {
        this.asked = asked;
        refusals = new Misunderstood(asked);
        this.asOf = asOf;
        this.people = people;
    }

    /**
     * Returns the question.
     *
     * @throws Refusal where a part of it can't be meant
     */
    public Question parse() {
        List<Field> by = distinct(asked.by(), this::grouping);
        if (by.isEmpty() || by.size() > MOST_GROUPS) {
            throw refusals.found(
                    "by", asked.by().size() + " names", "one to three of " + String.join(", ", groupings()));
        }
        Optional<Field> across = asked.across().isBlank() ? Optional.empty() : Optional.of(grouping(asked.across()));
        List<Field> down = new ArrayList<>(by);
        if (across.isPresent() && (!down.remove(across.get()) && by.size() == MOST_GROUPS || down.isEmpty())) {
            throw refusals.found(
                    "across", "\"" + asked.across() + "\"", "one of three names, with another one to stand down");
        }
        List<Measure> show = distinct(asked.show(), this::measure);
        Question.Order order = order();
        Question question = new Question(
                asked.title(),
                down,
                across,
                asked.where().stream().map(new ParseCondition(refusals)::parse).toList(),
                asked.from().isBlank() ? Absent.DAY : from(),
                asked.to().isBlank() ? Absent.DAY : refusals.day("to", asked.to()),
                date(),
                show.isEmpty() ? across.isPresent() ? USUAL_ACROSS : USUAL : show,
                order,
                asked.top());
        return guarded(ordered(show.isEmpty() ? question.withoutWages() : question));
    }

    /** A figure that rows are ordered by is shown; the largest first where only some rows are shown. */
    private static Question ordered(Question question) {
        List<Measure> show = new ArrayList<>(question.show());
        question.order().by().filter(by -> !show.contains(by)).ifPresent(show::add);
        Question.Order order = question.order().by().isEmpty() && question.top() > 0
                ? new Question.Order(Optional.of(show.get(0)), true)
                : question.order();
        return question.showing(show, order);
    }

    /** What hours cost, over the hours of one technician's jobs, is that person's wage. */
    private Question guarded(Question question) {
        Stream.of(Field.WRITER, Field.TECHNICIAN)
                .filter(person -> question.asksFor(person) && people == Disclosure.HIDDEN)
                .findFirst()
                .ifPresent(person -> {
                    throw refusals.because(
                            "\"" + person.word() + "\": figures about people are off. Tell the people concerned,"
                                    + " then set show_people = true in shop.toml and run the night again.");
                });
        if (question.asksFor(Field.TECHNICIAN)) {
            question.show().stream().filter(Measure::tellsWages).findFirst().ifPresent(measure -> {
                throw refusals.because(
                        "\"" + measure.word() + "\" by technician would tell what one person is paid. Show other"
                                + " figures, such as " + Measure.TAKEN.word() + " and " + Measure.LOAD.word() + ".");
            });
        }
        return question;
    }

    private static <T> List<T> distinct(List<String> words, Function<String, T> reading) {
        return words.stream().map(reading).distinct().toList();
    }

    private Field grouping(String word) {
        return Field.of(word).filter(Field::groups).orElseThrow(() -> refusals.unknown("by", word, groupings()));
    }

    private Measure measure(String word) {
        return Measure.of(word).orElseThrow(() -> refusals.unknown("show", word, measures()));
    }

    private static List<String> groupings() {
        return Arrays.stream(Field.values())
                .filter(Field::groups)
                .map(Field::word)
                .toList();
    }

    private static List<String> measures() {
        return Arrays.stream(Measure.values()).map(Measure::word).toList();
    }

    private Question.Order order() {
        String[] words = asked.sort().strip().toLowerCase(Locale.ROOT).split("\\s+");
        if (words[0].isEmpty() || words[0].equals("names")) {
            return new Question.Order(Optional.empty(), false);
        }
        if (words.length > 2 || words.length == 2 && !words[1].equals("rising") && !words[1].equals("falling")) {
            throw refusals.found("sort", "\"" + asked.sort() + "\"", "a figure, such as margin or \"margin rising\"");
        }
        Measure by = Measure.of(words[0]).orElseThrow(() -> refusals.unknown("sort", words[0], measures()));
        return new Question.Order(Optional.of(by), words.length == 1 || words[1].equals("falling"));
    }

    private Question.Day date() {
        String word = asked.date().strip();
        return word.isEmpty()
                ? Question.Day.QUOTED
                : Arrays.stream(Question.Day.values())
                        .filter(day -> day.word().equalsIgnoreCase(word))
                        .findFirst()
                        .orElseThrow(() -> refusals.unknown("date", word, List.of("quoted", "opened", "closed")));
    }

    private int from() {
        Matcher back = BACK.matcher(asked.from().strip());
        if (!back.matches()) {
            return refusals.day("from", asked.from());
        }
        int many = Integer.parseInt(back.group(1));
        Period period = switch (back.group(2)) {
            case "day" -> Period.ofDays(many);
            case "week" -> Period.ofWeeks(many);
            case "month" -> Period.ofMonths(many);
            default -> Period.ofYears(many);
        };
        return (int) LocalDate.ofEpochDay(asOf + 1L).minus(period).toEpochDay();
    }
}
