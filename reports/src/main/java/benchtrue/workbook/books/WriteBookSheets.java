package benchtrue.workbook.books;

import benchtrue.answers.PriceList;
import benchtrue.answers.QuoteTable;
import benchtrue.format.Figures;
import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import benchtrue.shop.Absent;
import benchtrue.shop.RepairType;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.Heading;
import benchtrue.workbook.sheet.PageSetup;
import benchtrue.workbook.sheet.SteadyWorkbook;
import benchtrue.workbook.sheet.TextHeight;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** Writes {@code price-list.xlsx}: each book to come beside the one before it, and the table for whoever writes quotes. */
public final class WriteBookSheets implements Report {
    /** The workbook's name. */
    public static final String FILE = "price-list.xlsx";

    private static final int HEADING_ROW = 3;
    private static final List<Heading> PRICES = List.of(
            Heading.text("Family", 14),
            Heading.text("Repair", 34),
            Heading.figure("Hours until then", 9),
            Heading.figure("Price until then", 10),
            Heading.figure("Hours", 9),
            Heading.figure("Price", 10),
            Heading.note("Mark", 18));
    private static final List<Heading> QUOTES = List.of(
            Heading.text("Family", 12),
            Heading.text("Repair", 28),
            Heading.figure("Hours in force", 8),
            Heading.figure("Price in force", 10),
            Heading.figure("Hours that 60 % of jobs fit", 10),
            Heading.figure("Hours that 80 % of jobs fit", 10),
            Heading.note("To come", 30),
            Heading.note("Look for at intake", 50));

    @Override
    public void write(Review review, Path folder) throws IOException {
        try (SteadyWorkbook workbook =
                new SteadyWorkbook(folder.resolve(FILE), review.ledger().asOf())) {
            CellStyles look = new CellStyles(workbook);
            for (PriceList list : review.priceLists()) {
                String day = LocalDate.ofEpochDay(list.book().effective()).toString();
                prices(list, review.settings().figures(), workbook.createSheet("From " + day), look);
            }
            new QuoteSheet(review).write(workbook.createSheet("Quote table"), look);
            workbook.save();
        }
    }

    private static void prices(PriceList list, Figures figures, SXSSFSheet sheet, CellStyles look) {
        Grid grid = new Grid(sheet, look);
        grid.row(1).text("Price list from " + figures.day(list.book().effective()), CellStyles.Kind.TITLE);
        grid.row(2).text(list.note() + " Quotes already accepted stand.");
        Heading.write(PRICES, HEADING_ROW, sheet, grid);
        int row = HEADING_ROW;
        for (PriceList.Family family : list.families()) {
            for (PriceList.Row price : family.rows()) {
                row++;
                grid.row(row).text(family.name()).text(price.repair().title(), CellStyles.Kind.WRAPPED);
                quote(grid, price.before());
                boolean gone = price.change() == PriceList.Change.NO_LONGER_OFFERED;
                quote(grid, gone ? Optional.empty() : Optional.of(price.repair()));
                grid.text(price.change() == PriceList.Change.SAME ? "" : mark(price), CellStyles.Kind.NOTE);
            }
        }
        PageSetup.area(sheet, PRICES.size(), row);
    }

    private static String mark(PriceList.Row row) {
        return benchtrue.format.Words.of(row.change()).replace('-', ' ');
    }

    private static void quote(Grid grid, Optional<RepairType> type) {
        grid.number(type.map(found -> Amounts.hours(found.bookSeconds())).orElse(Double.NaN), CellStyles.Kind.HOURS)
                .number(type.map(found -> Amounts.money(found.bookLabour())).orElse(Double.NaN), CellStyles.Kind.MONEY);
    }

    /** The table for whoever writes quotes. */
    private static final class QuoteSheet {
        private final Review review;
        private final Figures figures;

        QuoteSheet(Review review) {
            this.review = review;
            figures = review.settings().figures();
        }

        void write(SXSSFSheet sheet, CellStyles look) {
            Grid grid = new Grid(sheet, look);
            grid.row(1).text("Quote table, " + figures.day(review.ledger().asOf()), CellStyles.Kind.TITLE);
            grid.row(2).text(String.join(" ", review.answers().books()));
            Heading.write(QUOTES, HEADING_ROW, sheet, grid);
            int row = HEADING_ROW;
            for (QuoteTable.Family family : review.quoteTable().families()) {
                for (QuoteTable.Row quote : family.rows()) {
                    row++;
                    row(grid.row(row), quote, family.longer());
                }
            }
            PageSetup.area(sheet, QUOTES.size(), row);
        }

        private void row(Grid grid, QuoteTable.Row row, List<String> longer) {
            String coming =
                    String.join("; ", row.coming().stream().map(this::from).toList());
            String lookFor =
                    Stream.concat(row.lookFor().stream(), longer.stream()).collect(Collectors.joining("; "));
            grid.tall(Math.max(
                            TextHeight.of(lookFor, QUOTES.get(7).width()),
                            TextHeight.of(coming, QUOTES.get(6).width())))
                    .text(row.repair().family(), CellStyles.Kind.WRAPPED)
                    .text(row.repair().title(), CellStyles.Kind.WRAPPED);
            quote(grid, row.now());
            row.hoursThatFit()
                    .forEach(seconds -> grid.number(
                            Absent.has(seconds) ? Amounts.hours(seconds) : Double.NaN, CellStyles.Kind.HOURS));
            grid.text(coming, CellStyles.Kind.NOTE).text(lookFor, CellStyles.Kind.NOTE);
        }

        private String from(QuoteTable.From from) {
            return "from " + figures.day(from.effective()) + ": "
                    + figures.quote(from.repair().bookSeconds()) + ", "
                    + figures.price(from.repair().bookLabour());
        }
    }
}
