package benchtrue.breakdown;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Understands one condition: a name, a sign and a value, or several after "in" with commas between. */
final class ParseCondition {
    private static final Pattern CONDITION = Pattern.compile(
            "\\s*([\\p{L}\\p{N}_-]+)\\s*(!=|<=|>=|=|<|>|(?<=\\s)in(?=\\s)|(?<=\\s)contains(?=\\s))\\s*(\\S.*)");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]{1,9}(\\.[0-9]{1,4})?");
    private static final Map<Field, Pattern> TIMES = Map.of(
            Field.YEAR, Pattern.compile("[0-9]{4}"),
            Field.DECADE, Pattern.compile("[0-9]{3}0"),
            Field.QUARTER, Pattern.compile("(?i)[0-9]{4}-Q[1-4]"),
            Field.MONTH, Pattern.compile("[0-9]{4}-(0[1-9]|1[0-2])"));

    private final Misunderstood refusals;

    ParseCondition(Misunderstood refusals) {
        this.refusals = refusals;
    }

    Condition parse(String words) {
        Matcher parts = CONDITION.matcher(words);
        if (!parts.matches()) {
            throw refusals.found(
                    "where",
                    "\"" + words + "\"",
                    "a name, one of = != < <= > >= in contains, and a value, such as \"family = fretwork\"");
        }
        Field field = Field.of(parts.group(1)).orElseThrow(() -> refusals.unknown("where", parts.group(1), fields()));
        String sign = parts.group(2);
        if (!field.kind().signs().contains(sign)) {
            throw refusals.found(
                    "where",
                    "\"" + words.strip() + "\"",
                    field.word() + " with one of "
                            + String.join(" ", field.kind().signs()));
        }
        List<String> values = sign.equals("in")
                ? Arrays.stream(parts.group(3).split(",")).map(String::strip).toList()
                : List.of(parts.group(3).strip());
        values.forEach(value -> check(field, words, value));
        return new Condition(words.strip(), field, sign, values);
    }

    private static List<String> fields() {
        return Arrays.stream(Field.values()).map(Field::word).toList();
    }

    private void check(Field field, String words, String value) {
        if (field.kind() == Field.Kind.NUMBER && !NUMBER.matcher(value).matches()) {
            throw refusals.found(
                    "where", "\"" + words.strip() + "\"", "a number such as 6 or 2.5 after " + field.word());
        }
        if (field.kind() == Field.Kind.DAY || field == Field.BOOK) {
            refusals.day("where", value);
        }
        if (TIMES.containsKey(field) && !TIMES.get(field).matcher(value).matches()) {
            throw refusals.found(
                    "where", "\"" + words.strip() + "\"", field.word() + " as in 2026, 2026-Q3, 2026-09 or 1960");
        }
    }
}
