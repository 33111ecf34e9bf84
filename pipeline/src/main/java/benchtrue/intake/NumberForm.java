package benchtrue.intake;

import benchtrue.settings.HoursUnit;
import benchtrue.shop.Hours;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How a column of a file writes amounts: told from what stands in it, so that new amounts look like the old ones. */
final class NumberForm {
    private static final Pattern BODY = Pattern.compile("\\d(?:[\\d., '\u2019\u00a0\u202f]*\\d)?");
    private static final Pattern GROUPED = Pattern.compile("\\d{1,3}([., '\u2019\u00a0\u202f])\\d{3}(?!\\d).*");
    private static final Pattern CLOCK = Pattern.compile("(\\d+):\\d\\d(?::\\d\\d)?");
    private static final Pattern LETTERED = Pattern.compile("\\d{1,5}( ?h\\p{L}* ?)\\d{1,2}( ?m\\p{L}*\\.?)?");
    private static final int LONGEST = 6;

    private final char mark;
    private final List<String> texts;
    private final List<String> bodies;

    /**
     * Takes what stands in the column.
     *
     * @param mark what the file has before decimals
     * @param texts its cells that are not empty
     */
    NumberForm(char mark, List<String> texts) {
        this.mark = mark;
        this.texts = texts.stream().map(String::strip).toList();
        bodies = this.texts.stream()
                .map(BODY::matcher)
                .filter(Matcher::find)
                .map(Matcher::group)
                .toList();
    }

    /** Returns an amount as the column has it, with what stands around the number in a cell like it. */
    String written(BigDecimal amount, String like) {
        String number = number(amount);
        Matcher found = BODY.matcher(like);
        return found.find() ? like.substring(0, found.start()) + number + like.substring(found.end()) : number;
    }

    /** Returns hours as the column has them. */
    String hours(long seconds, HoursUnit unit, String like) {
        if (CLOCK.matcher(like).matches()) {
            Matcher clock = CLOCK.matcher(like);
            int digits = clock.matches() ? clock.group(1).length() : 1;
            boolean padded = texts.stream().anyMatch(text -> text.startsWith("0")) && digits > 1;
            String whole = Long.toString(seconds / Hours.SECONDS);
            String rest = ":" + two(seconds / 60 % 60) + (seconds % 60 == 0 ? "" : ":" + two(seconds % 60));
            return (padded && whole.length() < digits ? "0".repeat(digits - whole.length()) : "") + whole + rest;
        }
        if (like.startsWith("PT")) {
            return Duration.ofSeconds(seconds).toString();
        }
        Matcher lettered = texts.stream()
                .map(LETTERED::matcher)
                .filter(Matcher::matches)
                .findFirst()
                .orElse(null);
        if (lettered != null) {
            return seconds / Hours.SECONDS
                    + lettered.group(1)
                    + two(seconds / 60 % 60)
                    + (lettered.group(2) == null ? "" : lettered.group(2));
        }
        BigDecimal counted = BigDecimal.valueOf(seconds * unit.anHour())
                .divide(BigDecimal.valueOf(Hours.SECONDS), LONGEST, RoundingMode.HALF_EVEN);
        return written(counted, like);
    }

    private static String two(long number) {
        return (number < 10 ? "0" : "") + number;
    }

    /** As many decimals as the column always has, and more only where the amount needs them; thousands as it has them. */
    private String number(BigDecimal amount) {
        int fewest = bodies.stream().mapToInt(this::decimals).min().orElse(0);
        BigDecimal plain = amount.stripTrailingZeros();
        String[] parts = plain.setScale(Math.max(fewest, Math.max(plain.scale(), 0)), RoundingMode.UNNECESSARY)
                .toPlainString()
                .split("\\.");
        String whole = parts[0];
        String group = group();
        for (int at = whole.length() - 3; !group.isEmpty() && at > 0; at -= 3) {
            whole = whole.substring(0, at) + group + whole.substring(at);
        }
        return parts.length == 1 ? whole : whole + mark + parts[1];
    }

    private int decimals(String body) {
        int at = body.lastIndexOf(mark);
        return at < 0 ? 0 : body.length() - at - 1;
    }

    private String group() {
        return bodies.stream()
                .map(GROUPED::matcher)
                .filter(Matcher::matches)
                .map(found -> found.group(1))
                .filter(found -> found.charAt(0) != mark)
                .findFirst()
                .orElse("");
    }
}
