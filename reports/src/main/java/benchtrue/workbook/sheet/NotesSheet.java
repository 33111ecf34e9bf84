package benchtrue.workbook.sheet;

import benchtrue.format.Figures;
import benchtrue.format.Glossary;
import benchtrue.nightly.Review;
import benchtrue.shop.Balance;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Sheet;

/** How the figures came about, what they can't say, and the cautions that go with them. */
public final class NotesSheet {
    public static final String NAME = "Notes";
    private static final int WIDTH_CHARACTERS = 110;
    private static final List<String> METHOD = List.of(
            "Hours logged to a ticket as a whole are dealt over its lines by what jobs of each repair type usually take,"
                    + " worked out over all tickets together; no second is lost.",
            "Quoted hours are set against today's price book, so that an old book's error does not count twice.",
            "Hours per quoted hour counts closed jobs, with the hours spent putting them right.",
            "The range (90 % sure) comes from leaving out groups of tickets in turn and dealing the hours again each time.",
            "A repair is called under- or over-quoted only where chance alone would seldom show it, over all repairs together.",
            "Lost a year is at the shop rate and the yearly number of jobs; it is a range, not a promise.",
            "An empty cell is not known; it is never zero.");
    private static final List<String> CAUTIONS = List.of(
            "Ventilation, cure, clamping and paperwork time belong in the quote. Never shorten them to meet a figure here.",
            "Lacquers, solvents, superglue fumes, isocyanates, dust, shell dust, old lead paint, celluloid, stored voltage and"
                    + " string tension can hurt people. Local codes and licensed practice come first.",
            "Get the customer's approval before going over an estimate. A quote that was accepted stands, whatever the new book says.",
            "Wage, overtime, time-rounding, consumer and protected-species law differ from place to place: ask somebody licensed there.",
            "Figures drawn from people's time are no ground for pay or discipline, and staff should know that they are drawn.");

    private final Review review;
    private final Figures figures;

    public NotesSheet(Review review) {
        this.review = review;
        figures = review.settings().figures();
    }

    public void write(Sheet sheet, CellStyles look) {
        sheet.setColumnWidth(0, WIDTH_CHARACTERS * 256);
        Grid grid = new Grid(sheet, look);
        int row = 1;
        for (Block block : blocks()) {
            grid.row(row++).text(block.title, CellStyles.Kind.TITLE);
            for (String words : block.paragraphs) {
                grid.row(row++).tall(TextHeight.of(words, WIDTH_CHARACTERS)).text(words, CellStyles.Kind.WRAPPED);
            }
            row++;
        }
        PageSetup.portrait(sheet);
    }

    private record Block(String title, List<String> paragraphs) {}

    private List<Block> blocks() {
        String asOf = figures.day(review.ledger().asOf());
        List<String> left = new ArrayList<>();
        review.ledger()
                .leftOut()
                .forEach(table -> left.add("No file for " + table + " was in the inbox; what needs it is left out."));
        List<String> proof = review.balances().stream().map(this::proof).toList();
        return List.of(
                new Block("Review as of " + asOf, left),
                new Block("How it is worked out", METHOD),
                new Block("Words used", words()),
                new Block("Where everything went", proof),
                new Block("Cautions", CAUTIONS));
    }

    private static List<String> words() {
        return Glossary.ENTRIES.stream()
                .map(entry -> entry.word() + ": " + entry.plain() + ".")
                .toList();
    }

    private String proof(Balance balance) {
        StringBuilder words =
                new StringBuilder(balance.name()).append(": read ").append(amount(balance, balance.read()));
        for (Balance.Term term : balance.terms()) {
            if (term.amount() != 0) {
                words.append("; ").append(term.name()).append(' ').append(amount(balance, term.amount()));
            }
        }
        return words.toString();
    }

    private String amount(Balance balance, long amount) {
        return switch (balance.unit()) {
            case "seconds" -> figures.quote(amount);
            case "ten-thousandths" -> figures.price(amount);
            default -> figures.count(amount);
        };
    }
}
