package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.breakdown.Breakdown;
import benchtrue.breakdown.Facts;
import benchtrue.breakdown.Measure;
import benchtrue.breakdown.ParseQuestion;
import benchtrue.breakdown.Question;
import benchtrue.nightly.AskedResult;
import benchtrue.settings.AskedQuestion;
import benchtrue.settings.Disclosure;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The owner's own questions to a night of the sample, held against a grouping of {@code lines.csv} that is made here. */
class BreakdownTest {
    private static final long SEED = 20_261_031;
    private static final int QUESTIONS = 300;

    /** Plain names of groups with their column, and how a cell reads. */
    private static final Map<String, String> GROUPS = new TreeMap<>(Map.of(
            "family", "family",
            "class", "instrument_class",
            "decade", "built_decade",
            "payer", "paid_by",
            "charge", "charge_kind",
            "found", "found",
            "copied", "copied",
            "own-hours", "own_hours",
            "verdict", "verdict",
            "month", "quoted_month"));

    private static final Map<String, String> NUMBERS =
            new TreeMap<>(Map.of("taken", "actual_hours", "quoted", "quoted_hours", "days", "days_in_shop"));
    private static final List<Measure> SUMS =
            List.of(Measure.JOBS, Measure.QUOTED, Measure.TAKEN, Measure.LABOUR, Measure.MARGIN);

    @TempDir
    Path folder;

    private final OneNight night = OneNight.onTheSample();
    private final Outputs outputs = new Outputs(night.results());
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void figuresOfThreeHundredRandomQuestionsAreThoseOfTheLines() throws IOException {
        List<Map<String, String>> lines = outputs.table("lines.csv");
        Settings settings = new ReadSettings().read(night.shop());
        AskedResult result = AskedResult.open(night.shop(), settings, Optional.empty());
        Random random = new Random(SEED);
        int rows = 0;
        for (int i = 0; i < QUESTIONS; i++) {
            Asked asked = Asked.random(random, lines);
            String which = "seed " + SEED + ", question " + i + ": " + asked.by + " where " + asked.where;
            Question question = new ParseQuestion(asked.question(), result.asOf(), result.people()).parse();
            Breakdown answer = Facts.read(result.lines(), List.of(question), Facts.Listing.GROUPS, result.rows())
                    .answer(question, settings.figures());
            rows += asked.expect(which, answer, lines);
        }
        assertThat(rows).as("rows compared").isGreaterThan(2 * QUESTIONS);
    }

    /** A question with the same question asked of the rows of the file. */
    private record Asked(List<String> by, List<String> where, Predicate<Map<String, String>> meets) {
        static Asked random(Random random, List<Map<String, String>> lines) {
            List<String> names = new ArrayList<>(GROUPS.keySet());
            Collections.shuffle(names, random);
            List<String> by = names.subList(0, 1 + random.nextInt(3));
            List<String> where = new ArrayList<>();
            Predicate<Map<String, String>> meets = line -> line.get("state").equals("closed");
            for (int i = random.nextInt(3); i > 0; i--) {
                Map<String, String> example = lines.get(random.nextInt(lines.size()));
                String name = names.get(random.nextInt(names.size()));
                String value = example.get(GROUPS.get(name));
                if (!value.isEmpty()) {
                    boolean not = random.nextInt(4) == 0;
                    where.add(name + (not ? " != " : " = ") + value);
                    meets = meets.and(line -> line.get(GROUPS.get(name)).equals(value) != not);
                }
            }
            if (random.nextBoolean()) {
                String name = random.nextBoolean() ? "taken" : "days";
                int least = random.nextInt(name.equals("taken") ? 6 : 60);
                where.add(name + " >= " + least);
                meets = meets.and(line -> !line.get(NUMBERS.get(name)).isEmpty()
                        && Double.parseDouble(line.get(NUMBERS.get(name))) >= least);
            }
            return new Asked(by, where, meets);
        }

        AskedQuestion question() {
            return new AskedQuestion(
                    "",
                    by,
                    "",
                    where,
                    "",
                    "",
                    "",
                    SUMS.stream().map(Measure::word).toList(),
                    "",
                    0,
                    Disclosure.HIDDEN,
                    0);
        }

        int expect(String which, Breakdown answer, List<Map<String, String>> lines) {
            Map<List<String>, List<Map<String, String>>> groups = lines.stream()
                    .filter(meets)
                    .collect(Collectors.groupingBy(line -> by.stream()
                            .map(GROUPS::get)
                            .map(line::get)
                            .map(cell -> cell.isEmpty() ? "not known" : cell)
                            .toList()));
            assertThat(answer.rows()).as(which).hasSameSizeAs(groups.keySet());
            for (Breakdown.Row row : answer.rows()) {
                same(which + " " + row.names(), row, groups.get(row.names()));
            }
            same(which + " all", answer.total(), lines.stream().filter(meets).toList());
            return answer.rows().size();
        }

        private static void same(String which, Breakdown.Row row, List<Map<String, String>> lines) {
            long[] expected = {
                lines.size(),
                sum(lines, "quoted_hours", 3_600),
                sum(lines, "actual_hours", 3_600),
                sum(lines, "labour_revenue", 10_000),
                sum(lines, "margin", 10_000)
            };
            for (int i = 0; i < expected.length; i++) {
                assertThat(row.figures().get(i).amount())
                        .as(which + " " + SUMS.get(i))
                        .isEqualTo(expected[i]);
            }
        }

        private static long sum(List<Map<String, String>> lines, String column, int unit) {
            List<String> known = lines.stream()
                    .map(line -> line.get(column))
                    .filter(cell -> !cell.isEmpty())
                    .toList();
            return known.isEmpty()
                    ? Long.MIN_VALUE
                    : known.stream()
                            .map(cell -> new BigDecimal(cell)
                                    .multiply(BigDecimal.valueOf(unit))
                                    .setScale(0, RoundingMode.HALF_EVEN))
                            .reduce(BigDecimal.ZERO, BigDecimal::add)
                            .longValueExact();
        }
    }

    private int run(String... arguments) {
        List<String> all =
                new ArrayList<>(List.of("breakdown", "--shop", night.shop().toString()));
        all.addAll(List.of(arguments));
        return new Program(
                        new PrintWriter(out),
                        new PrintWriter(err),
                        false,
                        Clock.fixed(Instant.parse("2026-11-01T02:00:00Z"), ZoneOffset.UTC),
                        Map.of())
                .run(all.toArray(String[]::new));
    }

    @Test
    void allLinesTogetherAreWhatTheRecordOfTheRunHas() throws IOException {
        Path file = folder.resolve("all.csv");
        assertThat(run("--by", "state", "--show", "taken,labour,parts,margin", "--out", file.toString()))
                .as(err.toString())
                .isZero();
        List<Map<String, String>> rows = new Outputs(folder).table("all.csv");
        for (Map.Entry<String, String> figure : Map.of(
                        "labour", "labour_revenue", "parts", "parts_revenue", "margin", "margin")
                .entrySet()) {
            BigDecimal all = rows.stream()
                    .map(row -> new BigDecimal(row.get(figure.getKey())))
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(all).as(figure.getKey()).isEqualByComparingTo(outputs.recorded("money", figure.getValue()));
        }
        assertThat(out.toString()).doesNotContain("Left out");
        long onLines = Long.parseLong(outputs.recorded("balances", "on lines"));
        BigDecimal taken =
                rows.stream().map(row -> new BigDecimal(row.get("taken"))).reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(taken.multiply(BigDecimal.valueOf(3_600)).setScale(0, RoundingMode.HALF_EVEN))
                .isEqualByComparingTo(BigDecimal.valueOf(onLines));
    }

    @Test
    void loadByRepairIsThatOfTheFindings() throws IOException {
        Path file = folder.resolve("load.csv");
        assertThat(run("--by", "repair", "--show", "jobs,load", "--where", "counted = yes", "--out", file.toString()))
                .isZero();
        Map<String, String> found = outputs.table("findings.csv").stream()
                .collect(Collectors.toMap(row -> row.get("title"), row -> row.get("load_factor")));
        for (Map<String, String> row : new Outputs(folder).table("load.csv")) {
            assertThat(new BigDecimal(row.get("load")).setScale(2, RoundingMode.HALF_EVEN))
                    .as(row.get("repair"))
                    .isEqualByComparingTo(
                            new BigDecimal(found.get(row.get("repair"))).setScale(2, RoundingMode.HALF_EVEN));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--by | famly | Did you mean \"family\"?",
                "--by | repair,writer | figures about people are off",
                "--show | lode | Did you mean \"load\"?",
                "--where | clas = archtop | Did you mean \"class\"?",
                "--where | built_decade = 1960 | Did you mean \"decade\"?",
                "--where | family ~ fretwork | such as \"family = fretwork\"",
                "--where | taken > long | expected a number such as 6",
                "--where | opened > spring | expected a day such as 2026-03-01",
                "--where | technician = Wren | figures about people are off",
                "--from | yore | or how far back, such as \"12 months\"",
                "--date | quotd | Did you mean \"quoted\"?",
                "--sort | margn | Did you mean \"margin\"?"
            })
    void whatCannotBeMeantIsAnsweredWithWhatCan(String option, String value, String answer) {
        String[] arguments =
                option.equals("--by") ? new String[] {option, value} : new String[] {"--by", "repair", option, value};
        assertThat(run(arguments)).isEqualTo(64);
        assertThat(err.toString()).contains(answer);
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void anEmptyAnswerSaysWhichConditionLeavesNoJob() {
        assertThat(run("--by", "class", "--where", "family = fretwork", "--where", "payer = trad"))
                .isZero();
        assertThat(out.toString().replaceAll("\\s+", " "))
                .contains("No job is left: \"payer = trad\" leaves none", "Did you mean \"trade\"?");
    }

    @Test
    void everyJobBehindAnAnswerIsListedWithItsTicketAndLine() throws IOException {
        Path file = folder.resolve("jobs.csv");
        assertThat(run(
                        "--by",
                        "payer",
                        "--where",
                        "payer = trade",
                        "--show",
                        "taken",
                        "--jobs",
                        "--out",
                        file.toString()))
                .isZero();
        List<String> keys = new Outputs(folder)
                .table("jobs.csv").stream()
                        .map(row -> row.get("ticket") + " " + row.get("line"))
                        .toList();
        assertThat(keys)
                .containsExactlyInAnyOrderElementsOf(outputs.table("lines.csv").stream()
                        .filter(line -> line.get("paid_by").equals("trade")
                                && line.get("state").equals("closed"))
                        .map(line -> line.get("ticket") + " " + line.get("line"))
                        .toList());
    }

    @Test
    void theFirstRowsAndTheOthersTogetherAreAllOfThem() throws IOException {
        Path file = folder.resolve("top.csv");
        assertThat(run("--by", "repair,class", "--show", "jobs", "--top", "3", "--out", file.toString()))
                .isZero();
        List<Map<String, String>> rows = new Outputs(folder).table("top.csv");
        assertThat(rows).hasSize(4);
        assertThat(rows.stream()
                        .mapToLong(row -> Long.parseLong(row.get("jobs")))
                        .sum())
                .isEqualTo(outputs.table("lines.csv").stream()
                        .filter(line -> line.get("state").equals("closed"))
                        .count());
    }

    @ParameterizedTest
    @ValueSource(strings = {"csv", "xlsx", "html", "svg"})
    void noNameOfAPersonStandsInAnyFormWithPeopleOff(String form) throws IOException {
        Path file = folder.resolve("answer." + form);
        assertThat(run("--by", "repair,class", "--jobs", "--out", file.toString()))
                .as(err.toString())
                .isZero();
        String all = out + Files.readString(file, StandardCharsets.ISO_8859_1);
        for (String name : names()) {
            assertThat(all).doesNotContain(name);
        }
    }

    private List<String> names() throws IOException {
        try (Stream<String> rows = Files.lines(night.shop().resolve("exports/technicians.csv"))) {
            return rows.skip(1)
                    .map(row -> row.split(",")[0])
                    .distinct()
                    .filter(name -> name.length() > 3)
                    .toList();
        }
    }

    @Test
    void aResultThatSomebodyChangedIsNotAsked() throws IOException {
        Path copy = folder.resolve("shop");
        Path result = Files.createDirectories(copy.resolve("out/2026-10-31"));
        Files.copy(night.results().resolve("run.json"), result.resolve("run.json"));
        Files.writeString(
                result.resolve("lines.csv"),
                Files.readString(night.results().resolve("lines.csv")).replace("closed", "c1osed"));
        assertThat(new Program(new PrintWriter(out), new PrintWriter(err), false, Clock.systemUTC(), Map.of())
                        .run("breakdown", "--shop", copy.toString(), "--by", "family"))
                .isEqualTo(65);
        assertThat(err.toString()).contains("lines.csv is not as the run wrote it");
    }

    @Test
    void everyNightAnswersTheStandingQuestionsOnPageAndSheetsAndInTables() throws IOException {
        assertThat(outputs.words("review.html"))
                .contains("Your own questions", "Fretwork, repair by repair", "Hours of a refret, month by month");
        assertThat(outputs.table("breakdowns/fretwork-repair-by-repair.csv")).isNotEmpty();
        try (var workbook = outputs.workbook("breakdowns.xlsx")) {
            assertThat(workbook.getNumberOfSheets()).isEqualTo(3);
            assertThat(workbook.getSheetAt(0).getDrawingPatriarch()).isNotNull();
        }
        assertThat(night.results().resolve("charts/question-fretwork-repair-by-repair.svg"))
                .exists();
        assertThat(outputs.text("datapackage.json")).contains("breakdowns/hours-of-a-refret-month-by-month.csv");
    }

    @Test
    void aStandingQuestionThatCannotBeMeantStopsTheNightBeforeItsWork() throws IOException {
        Files.writeString(folder.resolve("shop.toml"), "[[breakdown]]\ntitle = \"Mine\"\nby = [\"famly\"]\n");
        Files.createDirectories(folder.resolve("exports"));
        assertThat(new Program(new PrintWriter(out), new PrintWriter(err), false, Clock.systemUTC(), Map.of())
                        .run("nightly", "--shop", folder.toString(), "--as-of", "2026-10-31"))
                .isEqualTo(78);
        assertThat(err.toString()).contains("shop.toml, line 1", "\"Mine\"", "Did you mean \"family\"?");
    }
}
