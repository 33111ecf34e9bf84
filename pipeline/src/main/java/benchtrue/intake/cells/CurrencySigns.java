package benchtrue.intake.cells;

import java.util.Currency;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Which currencies (ISO 4217) a sign before or behind an amount may mean. */
public final class CurrencySigns {
    private static final Map<String, Set<String>> SIGNS = Map.ofEntries(
            Map.entry("$", Set.of("USD", "CAD", "AUD", "NZD", "SGD", "HKD", "TWD", "MXN", "CLP", "COP", "ARS")),
            Map.entry("us$", Set.of("USD")),
            Map.entry("ca$", Set.of("CAD")),
            Map.entry("c$", Set.of("CAD")),
            Map.entry("a$", Set.of("AUD")),
            Map.entry("au$", Set.of("AUD")),
            Map.entry("nz$", Set.of("NZD")),
            Map.entry("r$", Set.of("BRL")),
            Map.entry("\u20ac", Set.of("EUR")),
            Map.entry("\u00a3", Set.of("GBP", "GIP", "FKP", "SHP", "EGP")),
            Map.entry("\u00a5", Set.of("JPY", "CNY")),
            Map.entry("\u20b9", Set.of("INR")),
            Map.entry("\u20a9", Set.of("KRW")),
            Map.entry("\u20ba", Set.of("TRY")),
            Map.entry("\u20aa", Set.of("ILS")),
            Map.entry("\u20b4", Set.of("UAH")),
            Map.entry("\u20bd", Set.of("RUB")),
            Map.entry("kr", Set.of("SEK", "NOK", "DKK", "ISK")),
            Map.entry("kr.", Set.of("SEK", "NOK", "DKK", "ISK")),
            Map.entry("fr", Set.of("CHF")),
            Map.entry("fr.", Set.of("CHF")),
            Map.entry("sfr", Set.of("CHF")),
            Map.entry("sfr.", Set.of("CHF")),
            Map.entry("euro", Set.of("EUR")),
            Map.entry("r", Set.of("ZAR")),
            Map.entry("z\u0142", Set.of("PLN")),
            Map.entry("k\u010d", Set.of("CZK")),
            Map.entry("ft", Set.of("HUF")),
            Map.entry("lei", Set.of("RON")));

    private CurrencySigns() {}

    /** Returns the codes of the currencies that a sign or code may mean; none where it is no currency. */
    public static Set<String> codes(String mark) {
        Set<String> known = SIGNS.get(mark.toLowerCase(Locale.ROOT));
        if (known != null) {
            return known;
        }
        try {
            return Set.of(Currency.getInstance(mark.toUpperCase(Locale.ROOT)).getCurrencyCode());
        } catch (IllegalArgumentException noCode) {
            return Set.of();
        }
    }
}
