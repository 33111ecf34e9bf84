package benchtrue.intake.cells;

import benchtrue.settings.DecimalSign;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a number with a decimal comma or point, groups of thousands, a currency, and a minus wherever it stands. */
public final class NumberText {
    private static final Pattern DRESSED =
            Pattern.compile("(\\()?([-+\u2212\u2013])?([\\p{L}\\p{Sc}][\\p{L}\\p{Sc}.]{0,4})?([-+\u2212\u2013])?"
                    + "([0-9][0-9.,'\u2019]*|[.,][0-9]+)"
                    + "([\\p{L}\\p{Sc}][\\p{L}\\p{Sc}.]{0,4})?([-+\u2212\u2013])?(\\))?");
    private static final Pattern FIGURES = Pattern.compile("\\d[\\d .,]*\\d");
    private static final Pattern SPACES = Pattern.compile("[ \u00a0\u2007\u2009\u202f]");
    private static final Pattern GROUPED_BY_SPACES = Pattern.compile("\\d{1,3}(?: \\d{3})+(?:[.,]\\d*)?");
    private static final Pattern GROUPED_BY_APOSTROPHES = Pattern.compile("\\d{1,3}(?:'\\d{3})+(?:[.,]\\d*)?");

    private static final int NUMBER = 5;

    private NumberText() {}

    /** What a number tells of the sign before its decimals. */
    public enum Sign {
        POINT,
        COMMA,
        /** One point and three figures: a thousand, or decimals. */
        OPEN_POINT,
        /** One comma and three figures: a thousand, or decimals. */
        OPEN_COMMA,
        SILENT
    }

    /** Returns what a text tells of the decimal sign of its file. */
    static Sign tells(String text) {
        String body = body(text);
        return body == null ? Sign.SILENT : sign(body);
    }

    private static Sign sign(String body) {
        int point = body.lastIndexOf('.');
        int comma = body.lastIndexOf(',');
        if (point >= 0 && comma >= 0) {
            return point > comma ? Sign.POINT : Sign.COMMA;
        }
        if (point < 0 && comma < 0) {
            return Sign.SILENT;
        }
        char mark = point >= 0 ? '.' : ',';
        Sign decimals = mark == '.' ? Sign.POINT : Sign.COMMA;
        Sign groups = mark == '.' ? Sign.COMMA : Sign.POINT;
        String plain = body.replace("'", "");
        if (plain.indexOf(mark) != plain.lastIndexOf(mark)) {
            return isGrouped(plain, mark) ? groups : Sign.SILENT;
        }
        boolean open = plain.matches("[1-9]\\d{0,2}[.,]\\d{3}") && plain.equals(body);
        return !open ? decimals : mark == '.' ? Sign.OPEN_POINT : Sign.OPEN_COMMA;
    }

    /**
     * Returns the number as 1234.5, or the text as it stands where it is none.
     *
     * @param decimals the file's decimal sign for what a number tells; asked only where there is a comma or a point
     */
    public static String canonical(String text, Function<Sign, DecimalSign> decimals) {
        Matcher dressed = dressed(text);
        if (dressed == null) {
            return text;
        }
        String number = undressed(dressed.group(NUMBER), decimals);
        if (number == null) {
            return text;
        }
        int minus = minus(dressed.group(2)) + minus(dressed.group(4)) + minus(dressed.group(7));
        boolean bracketed = dressed.group(1) != null && dressed.group(8) != null;
        if ((dressed.group(1) == null) != (dressed.group(8) == null) || minus + (bracketed ? 1 : 0) > 1) {
            return text;
        }
        return (minus > 0 || bracketed ? "-" : "") + number;
    }

    private static int minus(String sign) {
        return sign == null || sign.equals("+") ? 0 : 1;
    }

    private static String undressed(String body, Function<Sign, DecimalSign> decimals) {
        String plain = body.replace("'", "");
        if (plain.indexOf('.') < 0 && plain.indexOf(',') < 0) {
            return plain;
        }
        char mark = decimals.apply(sign(body)).sign();
        char group = mark == '.' ? ',' : '.';
        int at = plain.indexOf(mark);
        String whole = at < 0 ? plain : plain.substring(0, at);
        if (at != plain.lastIndexOf(mark) || at >= 0 && plain.indexOf(group, at) >= 0) {
            return null;
        }
        if (whole.indexOf(group) >= 0) {
            if (!isGrouped(whole, group)) {
                return null;
            }
            whole = whole.replace(String.valueOf(group), "");
        }
        return at < 0 ? whole : whole + "." + plain.substring(at + 1);
    }

    private static boolean isGrouped(String text, char mark) {
        return text.matches("\\d{1,3}(?:" + Pattern.quote(String.valueOf(mark)) + "\\d{3})+");
    }

    private static String body(String text) {
        Matcher dressed = dressed(text);
        return dressed == null ? null : dressed.group(NUMBER);
    }

    private static Matcher dressed(String text) {
        String plain = SPACES.matcher(text.strip()).replaceAll(" ").replace('\u2019', '\'');
        Matcher spaced = FIGURES.matcher(plain);
        if (spaced.find()
                && spaced.group().indexOf(' ') >= 0
                && !GROUPED_BY_SPACES.matcher(spaced.group()).matches()) {
            return null;
        }
        Matcher dressed = DRESSED.matcher(plain.replace(" ", ""));
        if (!dressed.matches() || !isCurrency(dressed.group(3)) || !isCurrency(dressed.group(6))) {
            return null;
        }
        String body = dressed.group(NUMBER);
        return body.indexOf('\'') >= 0 && !GROUPED_BY_APOSTROPHES.matcher(body).matches() ? null : dressed;
    }

    private static boolean isCurrency(String mark) {
        return mark == null || !CurrencySigns.codes(mark).isEmpty();
    }
}
