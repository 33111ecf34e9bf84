package benchtrue.breakdown;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * One condition that a job meets or not.
 *
 * @param words as the owner wrote it
 * @param field what is asked about
 * @param sign how it is compared
 * @param values with what; several after {@code in}
 */
record Condition(String words, Field field, String sign, List<String> values) {
    Condition {
        values = List.copyOf(values);
    }

    /** Returns whether text meets the condition, case apart; nothing known never meets more than "is not". */
    boolean holds(String found) {
        String text = found.toLowerCase(Locale.ROOT);
        if (field.kind() == Field.Kind.LIST && !sign.equals("contains")) {
            boolean has = Arrays.stream(text.split(";")).anyMatch(this::among);
            return sign.equals("!=") != has;
        }
        return switch (sign) {
            case "=", "in" -> among(text);
            case "!=" -> !among(text);
            case "contains" -> text.contains(values.get(0).toLowerCase(Locale.ROOT));
            default -> !text.isEmpty() && ordered(text.compareTo(values.get(0).toLowerCase(Locale.ROOT)));
        };
    }

    private boolean among(String text) {
        return values.stream().anyMatch(text::equalsIgnoreCase);
    }

    /** Returns whether a number meets the condition; NaN stands for one that is not known and meets none. */
    boolean holds(double found) {
        double wanted = Double.parseDouble(values.get(0));
        if (Double.isNaN(found)) {
            return false;
        }
        return switch (sign) {
            case "=" -> found == wanted;
            case "!=" -> found != wanted;
            default -> ordered(Double.compare(found, wanted));
        };
    }

    private boolean ordered(int comparison) {
        return switch (sign) {
            case "<" -> comparison < 0;
            case "<=" -> comparison <= 0;
            case ">" -> comparison > 0;
            default -> comparison >= 0;
        };
    }
}
