package benchtrue.settings;

import java.nio.charset.Charset;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How the files of one of the shop's systems are read: one {@code [[files]]} of {@code shop.toml}. What is empty is told
 * from the file. Names of tables and columns are as the owner wrote them; intake knows whether there are such.
 *
 * @param name pattern of the file's name, with {@code *} and {@code ?}
 * @param table table that its rows belong to
 * @param encoding of its letters
 * @param delimiter between cells
 * @param quote around text, or {@link #NO_QUOTE}
 * @param decimal before decimals
 * @param dates order of dates
 * @param headerLine line of the column names, from 1
 * @param totalsRow whether the last row is a total
 * @param shape how the table lies in the file
 * @param hours what a number for hours counts
 * @param span over which days one entry is a sum
 * @param columns canonical column = the file's header
 * @param values how the file's words become the contract's
 * @param constants canonical column = one text for every row
 * @param line of {@code shop.toml} on which the rule begins, from 1, for messages
 */
public record FileRule(
        String name,
        String table,
        Optional<Charset> encoding,
        Optional<Character> delimiter,
        Optional<Character> quote,
        Optional<DecimalSign> decimal,
        Optional<DateOrder> dates,
        OptionalInt headerLine,
        Optional<TotalsRow> totalsRow,
        FileShape shape,
        Optional<HoursUnit> hours,
        Optional<EntrySpan> span,
        List<Pair> columns,
        List<ValueMap> values,
        List<Pair> constants,
        int line) {
    /** The quote of a file in which a quotation mark is a letter like any other. */
    public static final char NO_QUOTE = '\0';

    private static final Pattern WILD = Pattern.compile("[*?]");

    public FileRule {
        columns = List.copyOf(columns);
        values = List.copyOf(values);
        constants = List.copyOf(constants);
    }

    /** Returns whether a file's name, without its folder, fits the pattern, whatever the case. */
    public boolean fits(String file) {
        return fits(name, file);
    }

    /** Returns whether a name fits a pattern with {@code *} and {@code ?}, whatever the case. */
    public static boolean fits(String name, String file) {
        StringBuilder pattern = new StringBuilder();
        Matcher wild = WILD.matcher(plain(name));
        int from = 0;
        while (wild.find()) {
            pattern.append(Pattern.quote(plain(name).substring(from, wild.start())));
            pattern.append(wild.group().equals("*") ? ".*" : ".");
            from = wild.end();
        }
        pattern.append(Pattern.quote(plain(name).substring(from)));
        return Pattern.compile(pattern.toString(), Pattern.DOTALL)
                .matcher(plain(file))
                .matches();
    }

    /** File systems differ in case and in how they write an accent. */
    private static String plain(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    }
}
