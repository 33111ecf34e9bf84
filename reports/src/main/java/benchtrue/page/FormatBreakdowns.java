package benchtrue.page;

import benchtrue.breakdown.Breakdown;
import benchtrue.breakdown.Figure;
import benchtrue.charts.BreakdownPicture;
import benchtrue.format.Figures;
import benchtrue.nightly.StandingAnswer;
import benchtrue.settings.Disclosure;
import java.util.List;
import java.util.stream.Stream;

/** Puts answers to the owner's own questions into tables of the page. */
final class FormatBreakdowns {
    /** Rows of one answer on the page; its file has all. */
    private static final int MOST_ROWS = 40;

    private final Figures figures;

    FormatBreakdowns(Figures figures) {
        this.figures = figures;
    }

    List<ReviewView.Answered> standing(List<StandingAnswer> answers) {
        return answers.stream()
                .map(answer -> answered(
                        answer.answer(), answer.name(), answer.picture(), "breakdowns/" + answer.name() + ".csv"))
                .toList();
    }

    /** Returns one answer; its picture where it is to be drawn and has rows, the name of its file where it has one. */
    ReviewView.Answered answered(Breakdown answer, String name, Disclosure picture, String file) {
        int most = file.isEmpty() ? answer.rows().size() : MOST_ROWS;
        List<ReviewView.Illustration> drawn =
                picture == Disclosure.HIDDEN || answer.rows().isEmpty()
                        ? List.of()
                        : List.of(FormatReview.illustration(BreakdownPicture.of(name, answer, figures)));
        return new ReviewView.Answered(
                "question-" + name,
                answer.title(),
                answer.notes(),
                answer.down(),
                answer.columns().stream().map(Breakdown.Column::heading).toList(),
                Stream.of(answer.rows().stream().limit(most), answer.rest().stream(), Stream.of(answer.total()))
                        .flatMap(rows -> rows)
                        .map(this::row)
                        .toList(),
                answer.rows().size() > most
                        ? "The first " + most + " of "
                                + figures.count(answer.rows().size()) + " rows."
                        : "",
                file,
                drawn);
    }

    private ReviewView.AnswerRow row(Breakdown.Row row) {
        return new ReviewView.AnswerRow(
                row.names(),
                row.figures().stream()
                        .map((Figure figure) -> figure.text(figures))
                        .toList());
    }
}
