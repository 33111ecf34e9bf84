package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.columns.InputFile;
import benchtrue.intake.columns.LineColumn;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.Notice;
import benchtrue.shop.PriceBook;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.RepairType;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntUnaryOperator;

/** The price book of a shop that keeps none: what was usually quoted for each repair by then. */
final class UsualQuotes {
    private static final String FAMILY = "repairs";
    private static final int EXAMPLES = 5;
    private final Map<String, List<Quote>> quotes = new TreeMap<>();
    private final Set<String> withoutQuote = new HashSet<>();
    private final long rate;
    private final boolean priced;
    private final List<String> files;
    private final int firstDay;

    /** One quoted line: hours and price, each absent where it was not quoted. */
    record Quote(int day, long seconds, long labour) {}

    /**
     * Takes the quotes that count.
     *
     * @param day the day on which a row was quoted
     * @param asOf the last day that counts
     */
    UsualQuotes(RowDispositions table, IntUnaryOperator day, Settings settings, int asOf) {
        TableRows rows = table.rows();
        files = rows.files().stream().map(InputFile::name).toList();
        long hours = 0;
        long labour = 0;
        int earliest = asOf;
        for (int row = 0; row < table.size(); row++) {
            String repair = rows.text(LineColumn.REPAIR_TYPE, row);
            if (!table.accepted(row) || repair.equals(PriceBooks.ONE_OFF) || day.applyAsInt(row) > asOf) {
                continue;
            }
            Quote quote = new Quote(
                    day.applyAsInt(row),
                    positive(rows.value(LineColumn.QUOTED_HOURS, row)),
                    positive(rows.value(LineColumn.QUOTED_LABOUR, row)));
            earliest = Math.min(earliest, quote.day);
            long kind = rows.value(LineColumn.CHARGE_KIND, row);
            boolean told = Absent.has(quote.seconds) || Absent.has(quote.labour);
            if (told && (!Absent.has(kind) || kind == ChargeKind.REPAIR.ordinal())) {
                quotes.computeIfAbsent(repair, first -> new ArrayList<>()).add(quote);
            } else {
                withoutQuote.add(repair);
            }
            if (Absent.has(quote.seconds) && Absent.has(quote.labour)) {
                hours += quote.seconds;
                labour += quote.labour;
            }
        }
        withoutQuote.removeAll(quotes.keySet());
        firstDay = earliest;
        priced = Absent.has(settings.shopRate()) || hours > 0;
        rate = Absent.has(settings.shopRate())
                ? settings.shopRate()
                : hours > 0 ? StrictMath.round((double) labour * Hours.SECONDS / hours) : Money.UNIT;
    }

    private static long positive(long figure) {
        return figure > 0 ? figure : Absent.AMOUNT;
    }

    /** Returns the repairs that stand on lines without a figure: their lines take their hours and are not judged. */
    Set<String> withoutQuote() {
        return withoutQuote;
    }

    /** Returns the seconds that a price stands for. */
    long seconds(long labour) {
        return Absent.has(labour) && priced ? StrictMath.round((double) labour * Hours.SECONDS / rate) : Absent.AMOUNT;
    }

    /**
     * Returns the books: a version from the first quote on and one from each day on which a repair's quotes changed for good; one
     * without a repair where no line has hours, or a price that can be turned into hours.
     */
    PriceBooks books() {
        Map<String, TreeMap<Integer, RepairType>> types = new TreeMap<>();
        TreeSet<Integer> days = new TreeSet<>();
        quotes.forEach((repair, all) -> {
            all.sort(Comparator.comparingInt(Quote::day));
            TreeMap<Integer, RepairType> versions = versions(repair, all);
            if (!versions.isEmpty()) {
                types.put(repair, versions);
            } else {
                withoutQuote.add(repair);
            }
        });
        if (types.isEmpty()) {
            return new PriceBooks(List.of(new PriceBook(firstDay, Map.of(), List.of())));
        }
        int first = types.values().stream().mapToInt(TreeMap::firstKey).min().orElseThrow();
        types.values()
                .forEach(versions ->
                        days.addAll(versions.keySet().stream().skip(1).toList()));
        days.add(first);
        List<PriceBook> books = new ArrayList<>();
        for (int day : days) {
            Map<String, RepairType> inForce = new TreeMap<>();
            types.forEach((repair, versions) -> inForce.put(
                    repair,
                    (versions.floorEntry(day) == null ? versions.firstEntry() : versions.floorEntry(day)).getValue()));
            books.add(new PriceBook(day, inForce));
        }
        return new PriceBooks(books);
    }

    /** Returns what was usual from which day on. */
    private TreeMap<Integer, RepairType> versions(String repair, List<Quote> all) {
        List<Quote> timed = all.stream()
                .map(quote -> new Quote(quote.day, Absent.firstOf(quote.seconds, seconds(quote.labour)), quote.labour))
                .filter(quote -> quote.seconds > 0)
                .toList();
        TreeMap<Integer, RepairType> versions = new TreeMap<>();
        int from = 0;
        for (int end :
                QuoteChanges.ends(timed.stream().mapToLong(Quote::seconds).toArray())) {
            List<Quote> usual = timed.subList(from, end);
            long seconds =
                    middle(usual.stream().mapToLong(Quote::seconds).sorted().toArray());
            long[] labours = usual.stream()
                    .mapToLong(Quote::labour)
                    .filter(Absent::has)
                    .sorted()
                    .toArray();
            versions.put(
                    usual.get(0).day,
                    new RepairType(
                            repair,
                            title(repair),
                            FAMILY,
                            seconds,
                            labours.length == 0 ? Money.perHour(rate, seconds) : middle(labours),
                            Absent.AMOUNT,
                            List.of(),
                            Absent.AMOUNT,
                            0));
            from = end;
        }
        return versions;
    }

    private static long middle(long[] sorted) {
        return sorted[(sorted.length - 1) / 2];
    }

    private static String title(String repair) {
        String words = repair.replace('-', ' ');
        return words.isEmpty() ? words : Character.toTitleCase(words.charAt(0)) + words.substring(1);
    }

    /** Returns what the owner should know of such a book. */
    List<Notice> notices(PriceBooks books) {
        List<Notice> notices = new ArrayList<>();
        if (books.newest().types().isEmpty()) {
            notices.add(new Notice(
                    "nothing-to-judge-by",
                    "Nothing can be judged: no line has hours quoted, and no price of a bench hour turns prices into hours. Map"
                            + " the column of the hours of these files (quoted_hours in [files.columns]), or say the price of a"
                            + " bench hour in shop.toml: shop_rate = ...",
                    files.size(),
                    files.stream().limit(EXAMPLES).toList()));
            return notices;
        }
        List<String> examples = books.newest().types().values().stream()
                .limit(EXAMPLES)
                .map(type -> type.title() + ": " + Hours.text(type.bookSeconds()) + " h")
                .toList();
        notices.add(new Notice(
                "book-from-quotes",
                "There is no price book: the usual quote of each repair by then stands for it. A draft is against that.",
                books.newest().types().size(),
                examples));
        if (!priced) {
            notices.add(new Notice(
                    "no-price-known",
                    "No price is known: a bench hour counts as 1, so that every amount says hours. Say its price in shop.toml:"
                            + " shop_rate = ...",
                    1,
                    List.of()));
        }
        if (!withoutQuote.isEmpty()) {
            notices.add(new Notice(
                    "repair-without-quote",
                    "A repair of which no line has hours or a price counts as one-off: it is not judged.",
                    withoutQuote.size(),
                    withoutQuote.stream().sorted().limit(EXAMPLES).toList()));
        }
        return notices;
    }
}
