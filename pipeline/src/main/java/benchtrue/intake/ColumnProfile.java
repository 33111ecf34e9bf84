package benchtrue.intake;

import benchtrue.intake.cells.CellFormat;
import benchtrue.intake.cells.CurrencySigns;
import benchtrue.intake.cells.DateSystem;
import benchtrue.intake.cells.DateText;
import benchtrue.intake.cells.NumberText;
import benchtrue.intake.cells.ReadCell;
import benchtrue.intake.cells.Reading;
import benchtrue.intake.cells.WrittenCells;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.columns.Problem;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.intake.dialects.DialectEvidence;
import benchtrue.intake.dialects.PointedMinutes;
import benchtrue.settings.DateOrder;
import benchtrue.shop.Hours;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands in one column of a file.
 *
 * @param header its name there
 * @param known the canonical column it is, where the file's columns are known
 * @param filled how many of its cells hold anything
 * @param texts how many cells hold each text, first met first; at most {@link #MOST_TEXTS} of a file
 */
public record ColumnProfile(String header, Optional<Column> known, long filled, Map<String, Long> texts) {
    static final int MOST_TEXTS = 50_000;

    private static final Pattern MARK = Pattern.compile("[\\p{L}\\p{Sc}][\\p{L}\\p{Sc}.]*");
    private static final CellFormat DAY_FIRST =
            new WrittenCells(() -> DateOrder.DAY_MONTH_YEAR, DialectEvidence::asItTells, DateSystem.FROM_1900);
    private static final CellFormat MONTH_FIRST =
            new WrittenCells(() -> DateOrder.MONTH_DAY_YEAR, DialectEvidence::asItTells, DateSystem.FROM_1900);

    /** Returns what stands in this column and in another file's of the same name. */
    ColumnProfile with(ColumnProfile other) {
        Map<String, Long> all = new LinkedHashMap<>(texts);
        other.texts.forEach((text, count) -> all.merge(text, count, Long::sum));
        return new ColumnProfile(header, known, filled + other.filled, all);
    }

    /** Returns the headers of columns as texts, each as often as the column is filled. */
    static Map<String, Long> names(List<ColumnProfile> columns) {
        Map<String, Long> names = new LinkedHashMap<>();
        columns.forEach(column -> names.merge(column.header, column.filled, Long::sum));
        return names;
    }

    /** Returns the column without the cells that say something. */
    ColumnProfile without(Predicate<String> said) {
        Map<String, Long> left = new LinkedHashMap<>(texts);
        left.keySet().removeIf(said);
        long filled = left.values().stream().mapToLong(count -> count).sum();
        return new ColumnProfile(header, known, filled, left);
    }

    /** Returns the share of its cells that can be read as a canonical column's; 0 without any. */
    public double fits(Column column) {
        long all = texts.values().stream().mapToLong(count -> count).sum();
        long fitting = texts.entrySet().stream()
                .filter(text -> says(column, text.getKey()))
                .mapToLong(Map.Entry::getValue)
                .sum();
        return all == 0 ? 0 : (double) fitting / all;
    }

    private static boolean says(Column column, String text) {
        if (column.cell().kind() == Kind.MONTH) {
            Optional<LocalDate> day = DateText.read(text, () -> DateOrder.DAY_MONTH_YEAR, DateSystem.FROM_1900);
            if (day.isPresent()) {
                return day.get().getDayOfMonth() == 1;
            }
        }
        return reads(DAY_FIRST, column, text) || reads(MONTH_FIRST, column, text);
    }

    private static boolean reads(CellFormat cells, Column column, String text) {
        return ReadCell.read(column.cell(), cells.canonical(column, text)).problem() == Problem.NONE;
    }

    /** Returns whether no text stands there twice. */
    public boolean isUnique() {
        return filled > 0 && texts.size() == filled;
    }

    /** Returns the share of its different texts that are among others; 0 without any. */
    public double among(Collection<String> others) {
        long found = texts.keySet().stream().filter(others::contains).count();
        return texts.isEmpty() ? 0 : (double) found / texts.size();
    }

    /** Returns its plain numbers in ascending order, one a cell. */
    public List<Double> numbers() {
        List<Double> numbers = new ArrayList<>();
        texts.forEach((text, count) -> {
            String number = NumberText.canonical(text, DialectEvidence::asItTells);
            if (number.matches("-?\\d+(\\.\\d*)?")) {
                for (long i = 0; i < count; i++) {
                    numbers.add(Double.valueOf(number));
                }
            }
        });
        numbers.sort(null);
        return numbers;
    }

    /** Returns what can be read of it as hours, one a cell, in ascending order. */
    public List<Double> hours() {
        List<Double> hours = new ArrayList<>();
        texts.forEach((text, count) -> {
            Reading reading = ReadCell.read(TimeColumn.HOURS.cell(), DAY_FIRST.canonical(TimeColumn.HOURS, text));
            if (reading.problem() == Problem.NONE) {
                hours.addAll(Collections.nCopies((int) Math.min(count, MOST_TEXTS), Hours.of(reading.value())));
            }
        });
        hours.sort(null);
        return hours;
    }

    /** Returns both readings of its hours where minutes may stand behind their sign; empty where they do not. */
    public Optional<String> pointedMinutes() {
        PointedMinutes pointed = new PointedMinutes();
        texts.forEach(pointed::take);
        return pointed.isOpen() ? Optional.of(pointed.readings()) : Optional.empty();
    }

    /** Returns the first of its days; empty where it holds none. */
    public Optional<LocalDate> earliest() {
        return texts.keySet().stream()
                .map(text -> DateText.read(text, () -> DateOrder.DAY_MONTH_YEAR, DateSystem.FROM_1900))
                .flatMap(Optional::stream)
                .min(LocalDate::compareTo);
    }

    /** Returns the codes (ISO 4217) that every currency in it and in its name may mean; none where there is no currency. */
    public Set<String> currencies() {
        Set<String> common = new TreeSet<>();
        List<String> places = new ArrayList<>(texts.keySet());
        places.add(header);
        for (String text : places) {
            Matcher mark = MARK.matcher(text);
            while (mark.find()) {
                Set<String> codes = CurrencySigns.codes(mark.group());
                if (common.isEmpty()) {
                    common.addAll(codes);
                } else if (!codes.isEmpty()) {
                    common.retainAll(codes);
                }
            }
        }
        return common;
    }
}
