package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;

/** What a shop's owner answers to what a draft asks, fixed before anything is asked: another question is not answered. */
final class FixedAnswers {
    private static final String ASKED = "# ASKED: ";

    /**
     * One answer.
     *
     * @param question the draft's own words
     * @param line what the owner writes into the draft
     */
    record Answer(String question, String line) {}

    private final List<Answer> answers;

    private FixedAnswers(List<Answer> answers) {
        this.answers = answers;
    }

    static FixedAnswers of(Answer... answers) {
        return new FixedAnswers(List.of(answers));
    }

    /** Returns the questions that {@code map} told, each with its file. */
    private static List<String> told(String said) {
        String[] parts = said.split("Still to be said:\\R");
        return parts.length < 2
                ? List.of()
                : parts[1].lines().takeWhile(line -> line.startsWith("  ")).toList();
    }

    /**
     * Returns the draft with all its questions answered, each in its place; a line that the draft took for the answer goes.
     *
     * @param said what {@code map} told
     */
    String into(String draft, String said) {
        List<String> lines = new ArrayList<>(draft.lines().toList());
        List<String> asked = lines.stream()
                .filter(line -> line.startsWith(ASKED))
                .map(line -> line.substring(ASKED.length()))
                .toList();
        assertThat(asked)
                .containsExactlyInAnyOrderElementsOf(
                        answers.stream().map(Answer::question).toList());
        assertThat(told(said))
                .hasSameSizeAs(asked)
                .allMatch(line -> asked.stream().anyMatch(line::endsWith));
        for (Answer answer : answers) {
            int at = lines.indexOf(ASKED + answer.question());
            String key = answer.line().split("=")[0];
            if (lines.size() > at + 2 && lines.get(at + 2).startsWith(key)) {
                lines.remove(at + 2);
            }
            lines.add(at + 2, answer.line());
        }
        return String.join("\n", lines) + "\n";
    }
}
