package benchtrue.workbook.draft;

import benchtrue.answers.QuoteTable;
import benchtrue.findings.FoundWork;
import benchtrue.findings.QuoteSizes.SizeClass;
import benchtrue.format.Figures;
import benchtrue.nightly.Review;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.SizeLines;
import benchtrue.revision.SurchargeLine;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.PageSetup;
import benchtrue.workbook.sheet.TextHeight;
import java.util.Comparator;
import java.util.List;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** What the first quote should ask for: work that the bench keeps finding, and traits that could have a line of their own. */
final class FirstLookSheet {
    static final String NAME = "First look";
    private static final int TITLE_WIDTH = 34;
    private static final int WORDS_WIDTH = 100;

    private final Review review;
    private final Ledger ledger;
    private final Figures figures;

    FirstLookSheet(Review review) {
        this.review = review;
        ledger = review.ledger();
        figures = review.settings().figures();
    }

    void write(SXSSFSheet sheet, CellStyles look) {
        sheet.setColumnWidth(0, TITLE_WIDTH * 256);
        sheet.setColumnWidth(1, WORDS_WIDTH * 256);
        Grid grid = new Grid(sheet, look);
        int row = 1;
        grid.row(row++).text("Look for this before the first quote", CellStyles.Kind.TITLE);
        List<FoundWork> all = review.findings().foundWork();
        List<FoundWork> pairs = QuoteTable.often(all).stream()
                .sorted(Comparator.comparing(pair -> ledger.title(pair.quoted())))
                .toList();
        for (FoundWork pair : pairs) {
            line(grid.row(row++), ledger.title(pair.quoted()), words(pair));
        }
        row = sentence(grid, row, pairs.isEmpty(), "No work that the bench finds again and again was seen.");
        row = rarer(grid, row, all.size() - pairs.size());
        grid.row(++row).text("Traits that could have a line of their own in the book", CellStyles.Kind.TITLE);
        row++;
        List<SurchargeLine> surcharges = review.revision().surcharges();
        for (SurchargeLine line : surcharges) {
            line(grid.row(row++), plain(line.trait()), words(line));
        }
        row = sentence(grid, row, surcharges.isEmpty(), "No trait surely makes a family of repairs longer.");
        sizes(grid, row);
        PageSetup.landscape(sheet);
    }

    /** Most shops quote each repair at about one size; they are not told so. */
    private void sizes(Grid grid, int last) {
        List<SizeLines> all = review.revision().sizeLines();
        if (all.isEmpty()) {
            return;
        }
        int row = last + 1;
        grid.row(row++).text("Repairs that could have two lines in the book, by size of quote", CellStyles.Kind.TITLE);
        for (SizeLines lines : all) {
            line(grid.row(row++), ledger.title(lines.sizes().repairType()), words(lines));
        }
    }

    private String words(SizeLines lines) {
        SizeClass small = lines.sizes().small();
        SizeClass large = lines.sizes().large();
        String finding = Character.toUpperCase(lines.finding().charAt(0))
                + lines.finding().substring(1);
        return finding + ": below " + figures.hours(lines.sizes().from()) + " the middle job took " + load(small)
                + ", from there on " + load(large) + ". " + lines.proposal() + ".";
    }

    private String load(SizeClass size) {
        return figures.ratio(size.load()) + " hours per quoted hour (" + figures.ratio(size.lower()) + " to "
                + figures.ratio(size.upper()) + ", " + figures.count(size.jobs(), "job", "jobs") + ")";
    }

    /** Says what is left out, so that nobody takes the list for all that may be found. */
    private int rarer(Grid grid, int row, int pairs) {
        return sentence(
                grid,
                row,
                pairs > 0,
                "Left out: " + figures.count(pairs, "pair", "pairs")
                        + " of repairs found together more often than elsewhere, but on fewer than one ticket in "
                        + figures.count((long) StrictMath.rint(1 / QuoteTable.OFTEN)) + ".");
    }

    private static void line(Grid grid, String title, String words) {
        grid.tall(Math.max(TextHeight.of(title, TITLE_WIDTH), TextHeight.of(words, WORDS_WIDTH)))
                .text(title, CellStyles.Kind.WRAPPED)
                .text(words, CellStyles.Kind.WRAPPED);
    }

    private static int sentence(Grid grid, int row, boolean said, String words) {
        if (said) {
            grid.row(row).text(words, CellStyles.Kind.TEXT);
            return row + 1;
        }
        return row;
    }

    private String words(FoundWork pair) {
        return "With this repair, " + QuoteTable.often(pair.share(), figures) + " also needed "
                + ledger.title(pair.found()) + ": "
                + figures.count(pair.times()) + " of " + figures.count(pair.tickets(), "ticket", "tickets")
                + " (90 % sure: " + figures.percent(pair.lower()) + " to " + figures.percent(pair.upper())
                + "), worth " + figures.aboutMoney(pair.annualMoney()) + " a year.";
    }

    private String words(SurchargeLine line) {
        return plain(line.family()) + " jobs with it took longer by " + figures.number(line.lowerHours(), 2) + " to "
                + figures.hours(line.upperHours()) + " (90 % sure, "
                + figures.count(line.jobs(), "job", "jobs") + " with it): a line of "
                + figures.quote(line.seconds()) + " at " + figures.price(line.labour()) + ".";
    }

    private static String plain(String word) {
        return word.replace('-', ' ');
    }
}
