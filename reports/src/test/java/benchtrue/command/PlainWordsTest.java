package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.format.Glossary;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who came up at the bench reads words of the bench; what may stand of statistics is in the glossary. */
class PlainWordsTest {
    /** What is never said to a reader, as a pattern, and what is said instead. */
    private static final Map<Pattern, String> NOT_SAID = notSaid();

    private static Map<Pattern, String> notSaid() {
        String[][] words = {
            {"load factors?", "hours per quoted hour"},
            {"typical factors?", "usual job"},
            {"drift\\w*", "getting slower"},
            {"drivers?", "what makes it longer"},
            {"censor\\w*", "still on the bench"},
            {"shrinkage|shrunk\\w*|pooled|pooling", "leaning on similar repairs"},
            {"re-?bas(e|ed|ing)", "against today's book"},
            {"burden", "payroll on-costs"},
            {"absor(bed|ption)", "carried by jobs"},
            {"margin bridges?", "why the month moved"},
            {"(job |product )?mix", "kinds of jobs"},
            {"materiality", "big enough to matter"},
            {"process floors?", "shortest safe hours"},
            {"back-?test\\w*", "tried on past jobs"},
            {"manifest", "record of the run"},
            {"effective rates?", "earned per bench hour"},
            {"utili[sz]ation", "share of paid hours sold"},
            {"bootstrap\\w*|jackknif\\w*|resampl\\w*|monte carlo|simulat\\w*", "drawn again"},
            {"p-?values?|significan\\w*|hypothes\\w*", "chance alone would seldom show it"},
            {"false (discover|positive)\\w*", "called wrong by chance"},
            {"posterior|likelihood|bayes\\w*|priors|probabilit\\w*", "chance"},
            {"confidence|credible|standard (error|deviation)s?", "90 % sure"},
            {"(?<!labour |efficiency |rate |price |quantity |spending |volume )varianc\\w*", "spread"},
            {"covarian\\w*|covariate\\w*|regress\\w*|coefficient\\w*|correlat\\w*", "goes with"},
            {"residuals?|outlier\\w*|outlying|skew\\w*|log-?normal|heavy tails?", "far from the usual"},
            {"(percen|quan|quar)tiles?|medians?", "usual job"},
            {"arithmetic means?|geometric means?|means? of", "average"},
            {"distribut(ion|ed)|degrees of freedom|estimators?|stochastic", "spread"},
            {
                "random effects?|mixed[- ](effects?|models?)|reml|ewma|cusum|kaplan\\S*|winsor\\w*|pinball",
                "its plain form"
            },
        };
        Map<Pattern, String> patterns = new LinkedHashMap<>();
        for (String[] word : words) {
            patterns.put(Pattern.compile("(?i)(?<![\\w-])(" + word[0] + ")(?![\\w-])"), word[1]);
        }
        return patterns;
    }

    private static void plain(String where, String text) {
        NOT_SAID.forEach((word, instead) -> {
            Matcher found = word.matcher(text);
            if (found.find()) {
                int from = Math.max(0, found.start() - 60);
                String around = text.substring(from, Math.min(text.length(), found.end() + 40));
                throw new AssertionError(
                        where + " says \"" + found.group() + "\", expected words like \"" + instead + "\": " + around);
            }
        });
    }

    private final OneNight night = OneNight.onTheSample();
    private final Outputs outputs = new Outputs(night.results());

    @ParameterizedTest
    @ValueSource(
            strings = {"review.html", "review-wall.html", "price-list.html", "quote-table.html", "price-explained.html"
            })
    void pagesSpeakPlainly(String page) throws IOException {
        plain(page, outputs.words(page));
    }

    @ParameterizedTest
    @ValueSource(strings = {"review.xlsx", "price-book-revision.xlsx"})
    void workbooksSpeakPlainlyAndExplainTheWordsThatTheyUse(String file) throws IOException {
        StringBuilder all = new StringBuilder();
        try (Workbook workbook = outputs.workbook(file)) {
            for (Sheet sheet : workbook) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        if (cell.getCellType() == CellType.STRING) {
                            plain(file + ", " + sheet.getSheetName() + " " + cell.getAddress(), cell.toString());
                            all.append(cell).append('\n');
                        }
                    }
                }
            }
        }
        for (Glossary.Entry entry : Glossary.ENTRIES) {
            assertThat(all).contains(entry.word() + ": " + entry.plain());
        }
    }

    @Test
    void tablesReasonsAndTheDigestSpeakPlainly() throws IOException {
        for (String[] text : new String[][] {
            {"findings.csv", "verdict"},
            {"findings.csv", "why"},
            {"revision.csv", "basis"},
            {"revision.csv", "held_because"}
        }) {
            for (Map<String, String> row : outputs.table(text[0])) {
                plain(text[0] + " " + text[1], row.get(text[1]));
            }
        }
        plain("digest.txt", outputs.text("digest.txt"));
        for (Path file : files(night.results().resolve("set-aside"), ".csv")) {
            for (Map<String, String> row : outputs.table("set-aside/" + file.getFileName())) {
                plain(
                        file.getFileName().toString(),
                        row.containsKey("reasons") ? row.get("reasons") : row.get("doubt") + " " + row.get("assumed"));
            }
        }
    }

    @Test
    void picturesSpeakPlainly() throws IOException {
        for (Path picture : files(night.results().resolve("charts"), ".svg")) {
            plain(picture.getFileName().toString(), outputs.words("charts/" + picture.getFileName()));
        }
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> found = Files.list(folder)) {
            List<Path> files = found.filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
            assertThat(files).as(folder + "/*" + ending).isNotEmpty();
            return files;
        }
    }

    @Test
    void theScreenAndTheWarningsOfTheRecordSpeakPlainly() throws IOException {
        plain("the summary", night.out());
        plain("the progress", night.err());
        Matcher words = Pattern.compile("\"words\": \"([^\"]*)\"").matcher(outputs.text("run.json"));
        while (words.find()) {
            plain("run.json", words.group(1));
        }
    }

    @Test
    void helpOfTheProgramAndOfEveryCommandSpeaksPlainly() {
        String all = help("--help");
        plain("benchtrue --help", all);
        Matcher command = Pattern.compile("(?m)^  ([a-z]+)  ").matcher(all.substring(all.indexOf("Commands:")));
        List<String> commands = new ArrayList<>();
        while (command.find()) {
            commands.add(command.group(1));
            plain("benchtrue " + command.group(1) + " --help", help(command.group(1), "--help"));
        }
        assertThat(commands)
                .contains("nightly", "check", "adopt", "close", "verify")
                .doesNotContain("sample");
    }

    private static String help(String... arguments) {
        StringWriter said = new StringWriter();
        PrintWriter screen = new PrintWriter(said);
        Clock clock = Clock.fixed(Instant.parse("2026-11-01T02:00:00Z"), ZoneOffset.UTC);
        assertThat(new Program(screen, screen, false, clock, Map.of()).run(arguments))
                .isZero();
        return said.toString();
    }

    /** Messages that no test run brings about are read in the source: every text with a space in it is for a reader. */
    @ParameterizedTest
    @ValueSource(strings = {"../pipeline/src/main/java", "src/main/java"})
    void messagesSpeakPlainly(String sources) throws IOException {
        int texts = 0;
        try (Stream<Path> found = Files.walk(Path.of(sources))) {
            for (Path file : found.filter(path -> path.toString().endsWith(".java"))
                    .filter(path -> !path.getParent().endsWith("statistics"))
                    .filter(path -> !path.endsWith("TruthFiles.java")) // For those who check the methods.
                    .collect(Collectors.toCollection(ArrayList::new))) {
                String code = Files.readString(file).replaceAll("(?s)/\\*.*?\\*/|(?m)//.*$", "");
                Matcher text = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"").matcher(code);
                while (text.find()) {
                    if (text.group(1).strip().contains(" ")) {
                        plain(file.getFileName().toString(), text.group(1));
                        texts++;
                    }
                }
            }
        }
        assertThat(texts).isGreaterThan(100);
    }

    /** Names of settings, files and columns stand in back quotes and are a contract. */
    @Test
    void theFirstPageOfTheProjectSpeaksPlainly() throws IOException {
        plain("README.md", Files.readString(Path.of("..", "README.md")).replaceAll("`[^`]*`", "`"));
    }
}
