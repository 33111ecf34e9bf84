package benchtrue.nightly;

import benchtrue.breakdown.BreakdownTable;
import benchtrue.breakdown.Facts;
import benchtrue.breakdown.ParseQuestion;
import benchtrue.breakdown.Question;
import benchtrue.settings.AskedQuestion;
import benchtrue.settings.Settings;
import benchtrue.tables.ResultTable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The questions that the settings ask every night: understood before the night begins, answered once its lines are written. */
final class StandingQuestions {
    /** The folder of their tables. */
    private static final String FOLDER = "breakdowns";

    private static final int LONGEST_NAME = 48;

    private final Settings settings;
    private final List<Question> questions;

    private StandingQuestions(Settings settings, List<Question> questions) {
        this.settings = settings;
        this.questions = questions;
    }

    /**
     * Returns the questions of a shop.
     *
     * @throws benchtrue.shop.Refusal with the line of the settings, where one can't be meant
     */
    static StandingQuestions of(Settings settings, int asOf) {
        return new StandingQuestions(
                settings,
                settings.breakdowns().stream()
                        .map(asked -> new ParseQuestion(asked, asOf, settings.people()).parse())
                        .toList());
    }

    /** Answers all from the table of lines, so many rows; without any the library behind them is not loaded. */
    List<StandingAnswer> answers(ResultTable<Integer> lines, int rows) {
        if (questions.isEmpty()) {
            return List.of();
        }
        Facts facts = Facts.of(lines, rows, questions);
        Map<String, StandingAnswer> answers = new LinkedHashMap<>();
        for (int i = 0; i < questions.size(); i++) {
            AskedQuestion asked = settings.breakdowns().get(i);
            String name = name(asked.title());
            String free = answers.containsKey(name) ? name + "-" + (i + 1) : name;
            answers.put(
                    free,
                    new StandingAnswer(free, facts.answer(questions.get(i), settings.figures()), asked.picture()));
        }
        return new ArrayList<>(answers.values());
    }

    /** A title as the name of a file on any machine. */
    private static String name(String title) {
        String plain =
                title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String name = plain.substring(0, Math.min(plain.length(), LONGEST_NAME)).replaceAll("-$", "");
        return name.isEmpty() ? "question" : name;
    }

    /** Writes each answer as a table of its own, and returns what describes these. */
    static List<Map<String, Object>> write(List<StandingAnswer> answers, Path folder) throws IOException {
        List<Map<String, Object>> described = new ArrayList<>();
        if (answers.isEmpty()) {
            return described;
        }
        Files.createDirectories(folder.resolve(FOLDER));
        for (StandingAnswer answer : answers) {
            var table = BreakdownTable.of(answer.answer(), FOLDER + "/" + answer.name());
            table.write(BreakdownTable.rows(answer.answer()), folder);
            described.add(table.described());
        }
        return described;
    }
}
