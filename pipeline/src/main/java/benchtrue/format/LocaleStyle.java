package benchtrue.format;

import java.util.Map;

/**
 * How a region writes numbers, dates and money; a table of our own, so that a JDK's locale data change nothing. Facts as in
 * the Unicode Common Locale Data Repository.
 *
 * @param decimal decimal mark
 * @param group mark between thousands
 * @param groupFrom digits before the decimal mark from which thousands are marked
 * @param date pattern of a date: {@code d}, {@code dd}, {@code m}, {@code mm}, {@code mon}, {@code yyyy} and literal marks
 * @param currency place of the currency sign
 */
record LocaleStyle(String decimal, String group, int groupFrom, String date, CurrencyPlace currency) {
    /** Where the sign of a currency stands. */
    enum CurrencyPlace {
        BEFORE,
        BEFORE_WITH_SPACE,
        AFTER
    }

    static final String SPACE = "\u00a0";
    private static final String THIN = "\u202f";
    private static final LocaleStyle ENGLISH = style(".", ",", 4, "d mon yyyy", CurrencyPlace.BEFORE);
    private static final Map<String, LocaleStyle> STYLES = Map.ofEntries(
            Map.entry("en", ENGLISH),
            Map.entry("en-US", style(".", ",", 4, "mon d, yyyy", CurrencyPlace.BEFORE)),
            Map.entry("en-ZA", style(",", SPACE, 4, "d mon yyyy", CurrencyPlace.BEFORE)),
            Map.entry("de", style(",", ".", 4, "dd.mm.yyyy", CurrencyPlace.AFTER)),
            Map.entry("de-AT", style(",", SPACE, 4, "dd.mm.yyyy", CurrencyPlace.BEFORE_WITH_SPACE)),
            Map.entry("de-CH", style(".", "\u2019", 4, "dd.mm.yyyy", CurrencyPlace.BEFORE_WITH_SPACE)),
            Map.entry("fr", style(",", THIN, 4, "dd/mm/yyyy", CurrencyPlace.AFTER)),
            Map.entry("fr-CA", style(",", SPACE, 4, "yyyy-mm-dd", CurrencyPlace.AFTER)),
            Map.entry("es", style(",", ".", 5, "d/m/yyyy", CurrencyPlace.AFTER)),
            Map.entry("es-MX", style(".", ",", 4, "d/m/yyyy", CurrencyPlace.BEFORE)),
            Map.entry("it", style(",", ".", 4, "dd/mm/yyyy", CurrencyPlace.AFTER)),
            Map.entry("nl", style(",", ".", 4, "dd-mm-yyyy", CurrencyPlace.BEFORE_WITH_SPACE)),
            Map.entry("pt", style(",", ".", 4, "dd/mm/yyyy", CurrencyPlace.BEFORE_WITH_SPACE)),
            Map.entry("pt-PT", style(",", SPACE, 5, "dd/mm/yyyy", CurrencyPlace.AFTER)),
            Map.entry("sv", style(",", SPACE, 4, "yyyy-mm-dd", CurrencyPlace.AFTER)),
            Map.entry("da", style(",", ".", 4, "dd.mm.yyyy", CurrencyPlace.AFTER)),
            Map.entry("nb", style(",", SPACE, 4, "dd.mm.yyyy", CurrencyPlace.AFTER)),
            Map.entry("no", style(",", SPACE, 4, "dd.mm.yyyy", CurrencyPlace.AFTER)),
            Map.entry("fi", style(",", SPACE, 4, "d.m.yyyy", CurrencyPlace.AFTER)),
            Map.entry("pl", style(",", SPACE, 5, "d.mm.yyyy", CurrencyPlace.AFTER)),
            Map.entry("cs", style(",", SPACE, 4, "d. m. yyyy", CurrencyPlace.AFTER)),
            Map.entry("uk", style(",", SPACE, 4, "dd.mm.yyyy", CurrencyPlace.AFTER)),
            Map.entry("ru", style(",", SPACE, 4, "dd.mm.yyyy", CurrencyPlace.AFTER)),
            Map.entry("ja", style(".", ",", 4, "yyyy/mm/dd", CurrencyPlace.BEFORE)),
            Map.entry("ko", style(".", ",", 4, "yyyy. m. d.", CurrencyPlace.BEFORE)),
            Map.entry("zh", style(".", ",", 4, "yyyy/m/d", CurrencyPlace.BEFORE)));

    private static LocaleStyle style(String decimal, String group, int groupFrom, String date, CurrencyPlace currency) {
        return new LocaleStyle(decimal, group, groupFrom, date, currency);
    }

    /** Returns the style of a BCP 47 tag, else of its language, else English with ISO dates. */
    static LocaleStyle of(String tag) {
        String wanted = tag;
        while (!wanted.isEmpty()) {
            LocaleStyle found = STYLES.get(wanted);
            if (found != null) {
                return found;
            }
            wanted = wanted.substring(0, Math.max(0, wanted.lastIndexOf('-')));
        }
        return style(".", ",", 4, "yyyy-mm-dd", CurrencyPlace.BEFORE);
    }
}
