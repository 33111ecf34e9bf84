package benchtrue.intake.dialects;

import benchtrue.intake.cells.CellFormat;
import benchtrue.intake.cells.CurrencySigns;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.columns.Problem;
import benchtrue.intake.files.Records;
import benchtrue.settings.ReadSettings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The currencies that stand in a table's amounts, each with the first place it was met. */
public final class CurrencyMarks {
    /** The currency of a shop that has not named its own (ISO 4217: no currency). */
    private static final String NOT_NAMED = "XXX";

    private static final Pattern MARK = Pattern.compile("[\\p{L}\\p{Sc}][\\p{L}\\p{Sc}.]*");
    private final Map<String, Met> met = new LinkedHashMap<>();

    /** An amount with a currency. */
    private record Met(Set<String> codes, String place, String text) {}

    /** Returns cells that say the same, and whose currencies are noted with the place of the newest record. */
    public CellFormat watch(CellFormat cells, String file, Records records) {
        return (column, text) -> {
            Kind kind = column.cell().kind();
            if (kind == Kind.MONEY || kind == Kind.SIGNED_MONEY) {
                note(text, file + ", line " + records.line() + ", column " + column.header());
            }
            return cells.canonical(column, text);
        };
    }

    private void note(String text, String place) {
        Matcher mark = MARK.matcher(text);
        if (mark.find() && text.chars().anyMatch(Character::isDigit)) {
            Set<String> codes = CurrencySigns.codes(mark.group());
            if (!codes.isEmpty()) {
                met.putIfAbsent(mark.group(), new Met(codes, place, text));
            }
        }
    }

    /**
     * Refuses amounts in another currency than the shop's; in one that has not named its own, amounts in two.
     *
     * @param currency the shop's
     * @param tables what was met in each table, in the order of tables
     */
    public static void requireOne(String currency, List<CurrencyMarks> tables) {
        List<Met> all = new ArrayList<>();
        tables.forEach(table -> all.addAll(table.met.values()));
        Set<String> common = new TreeSet<>(currency.equals(NOT_NAMED) ? List.of() : List.of(currency));
        for (Met found : all) {
            if (common.isEmpty()) {
                common.addAll(found.codes);
            }
            common.retainAll(found.codes);
            if (common.isEmpty()) {
                throw refused(found, currency, all.get(0));
            }
        }
    }

    private static Refusal refused(Met found, String currency, Met first) {
        String expected = currency.equals(NOT_NAMED)
                ? "one currency (" + first.place + " has \"" + Problem.shown(first.text) + "\")"
                : "amounts in " + currency + ", the currency in " + ReadSettings.FILE;
        return new Refusal(
                ExitCode.UNUSABLE_FILE,
                found.place + ": found \"" + Problem.shown(found.text) + "\", expected " + expected
                        + ". Nothing is converted: export every amount in one currency, or keep a shop folder a currency.");
    }
}
