package benchtrue.mapping;

import benchtrue.format.TomlText;
import benchtrue.intake.ColumnProfile;
import benchtrue.intake.FileProfile;
import benchtrue.intake.ProfileFiles;
import benchtrue.intake.columns.BookColumn;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.columns.LineColumn;
import benchtrue.intake.columns.Need;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.TicketColumn;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Drafts how a shop's own files are read. */
public final class DraftMapping {
    private final TradeWords words = new TradeWords();
    private final List<String> found = new ArrayList<>();
    private final List<String> questions = new ArrayList<>();
    private final List<String> derived = new ArrayList<>();

    /**
     * Returns the draft for the files that neither their names nor the settings explain.
     *
     * @param shop the shop's folder
     * @param settings the shop's settings, which are carried over
     * @param own text of {@code shop.toml}, empty without one
     * @throws benchtrue.shop.Refusal where the folder or its inbox is missing
     */
    public Draft draft(Path shop, Settings settings, String own) {
        List<FileProfile> files = new ProfileFiles().profile(shop, settings, words::familiar);
        List<FileProfile> known =
                files.stream().filter(file -> file.table().isPresent()).toList();
        Map<Guess, List<FileProfile>> found = new FindTables(files, words).guesses();
        files.stream()
                .filter(file -> file.table().isEmpty())
                .filter(file -> found.values().stream().noneMatch(alike -> alike.contains(file)))
                .forEach(file -> this.found.add(file.shown() + ": "
                        + file.refusal()
                                .map(why -> "can't be read (" + why + ")")
                                .orElse("looks like no table.")));
        List<Guess> guesses = List.copyOf(found.keySet());
        askForTables(known, guesses);
        List<String> rules = rules(files, found);
        RepairWords repairs = new RepairWords(known, guesses, settings);
        repairs.question().ifPresent(questions::add);
        CarriedOver carried = new CarriedOver(
                own, known, found.values().stream().flatMap(List::stream).toList());
        this.found.addAll(carried.newColumns(settings.files()));
        if (rules.isEmpty() && repairs.lines().isEmpty()) {
            return new Draft("", this.found, questions);
        }
        List<String> kept = repairs.into(String.join("\n", carried.lines(settings.files())))
                .lines()
                .toList();
        return new Draft(text(settings, kept, guesses, repairs.after(own, rules)), this.found, questions);
    }

    private List<String> rules(List<FileProfile> files, Map<Guess, List<FileProfile>> guesses) {
        ValueWords values = new ValueWords(words);
        List<Guess> all = List.copyOf(guesses.keySet());
        List<String> lines = new ArrayList<>();
        guesses.forEach((guess, alike) -> {
            RulePlace place = new RulePlace(guess, alike, files);
            for (String pattern : place.patterns()) {
                DraftRule rule = new DraftRule(guess, values);
                lines.add("");
                lines.addAll(rule.lines(pattern, place, firstDay(all)));
                rule.questions().stream()
                        .filter(question -> !questions.contains(question))
                        .forEach(questions::add);
            }
            found.add(alike.get(0).shown()
                    + (alike.size() == 1 ? "" : " and " + (alike.size() - 1) + " more like it")
                    + ": " + guess.table().title() + ", " + StrictMath.round(100 * guess.confidence()) + " % sure.");
        });
        return lines;
    }

    /** Returns the first day that stands in the files: from then on a price list without a day of its own holds. */
    private static LocalDate firstDay(List<Guess> guesses) {
        return guesses.stream()
                .flatMap(guess -> guess.matches().stream())
                .filter(match -> match.isSure()
                        && (match.column() == TicketColumn.OPENED
                                || match.column() == TimeColumn.WORK_DATE
                                || match.column() == LineColumn.QUOTED_ON))
                .map(match -> match.source().earliest())
                .flatMap(Optional::stream)
                .min(LocalDate::compareTo)
                .orElse(LocalDate.of(2000, 1, 1));
    }

    private void askForTables(List<FileProfile> known, List<Guess> guesses) {
        for (Table table : Table.values()) {
            boolean there = known.stream().anyMatch(file -> file.table().get() == table)
                    || guesses.stream().anyMatch(guess -> guess.table() == table && !lacksFigures(guess));
            if (!there && table == Table.TICKETS) {
                derived.add(
                        "# No tickets file: tickets come from quotes and time log; opened on the day of the first quote, else of"
                                + " the first work, finished after a long silence.");
            }
            if (!there && table == Table.PRICE_BOOK) {
                derived.add("# No price book: what was usually quoted for each repair by then stands for it.");
                askForRate(guesses);
            }
            if (!there && table.need() == Need.REQUIRED) {
                questions.add("No file looks like " + table.title() + " (one row is " + table.oneRow()
                        + "): export it, a run needs it.");
            }
        }
    }

    /** A price list without its hours or its prices is left out, until somebody says them. */
    private static boolean lacksFigures(Guess guess) {
        return guess.missing().contains(BookColumn.BOOK_HOURS)
                || guess.missing().contains(BookColumn.BOOK_LABOUR);
    }

    /** Without hours quoted, only the price of a bench hour says how many hours a price stands for. */
    private void askForRate(List<Guess> guesses) {
        boolean hours = guesses.stream()
                .filter(guess -> guess.table() == Table.QUOTED_LINES)
                .flatMap(guess -> guess.matches().stream())
                .anyMatch(match -> match.isSure() && match.column() == LineColumn.QUOTED_HOURS);
        boolean quotes = guesses.stream().anyMatch(guess -> guess.table() == Table.QUOTED_LINES);
        if (quotes && !hours) {
            String question =
                    "no column says hours quoted; what does a bench hour cost, to turn quoted prices into hours?";
            questions.add("shop.toml: " + question);
            derived.add("# ASKED: " + question);
            derived.add("# shop_rate = 100");
        }
    }

    private String text(Settings settings, List<String> carried, List<Guess> guesses, List<String> rules) {
        List<String> lines = new ArrayList<>();
        lines.add(
                "# Drafted by benchtrue map from the files of this shop. Behind each column stand how sure the draft is, in");
        lines.add("# percent, and why. Correct what is wrong, answer what is ASKED, and rename the file to "
                + ReadSettings.FILE + ".");
        Set<String> currencies =
                settings.currency().equals(Settings.DEFAULTS.currency()) ? currencies(guesses) : Set.of();
        if (currencies.size() == 1) {
            lines.add("currency = " + TomlText.quoted(currencies.iterator().next()) + "  # it stands in the amounts");
        }
        lines.addAll(derived);
        if (carried.stream().allMatch(line -> line.isBlank() || line.startsWith("# Carried"))) {
            lines.add("# zone = \"Europe/Dublin\"  # the shop's time zone");
        } else {
            lines.addAll(carried);
        }
        lines.addAll(rules);
        return String.join("\n", lines) + "\n";
    }

    private static Set<String> currencies(List<Guess> guesses) {
        Set<String> common = new TreeSet<>();
        for (ColumnProfile source :
                guesses.stream().flatMap(DraftMapping::money).toList()) {
            Set<String> codes = source.currencies();
            if (common.isEmpty()) {
                common.addAll(codes);
            } else if (!codes.isEmpty()) {
                common.retainAll(codes);
            }
        }
        return common;
    }

    private static Stream<ColumnProfile> money(Guess guess) {
        return guess.matches().stream()
                .filter(match -> match.column().cell().kind() == Kind.MONEY
                        || match.column().cell().kind() == Kind.SIGNED_MONEY)
                .map(Match::source);
    }
}
