package benchtrue.tables;

import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import benchtrue.shop.Surcharge;
import java.io.IOException;
import java.nio.file.Path;

/** Writes one version of the price book as the program reads it. */
public final class WritePriceBook {
    private static final ResultTable<RepairType> TABLE = ResultTable.<RepairType>of(
                    "price-book", "One row is one repair")
            .text("repair_type", "key of the repair", RepairType::repairType)
            .text("title", "its title", RepairType::title)
            .text("family", "its family", RepairType::family)
            .seconds("book_hours", "standard", RepairType::bookSeconds)
            .money("book_labour", "standard price", RepairType::bookLabour)
            .seconds("least_hours", "shortest safe", RepairType::leastSeconds)
            .text("hazards", "words, separated by semicolons", type -> String.join(";", type.hazards()))
            .money("least_labour", "minimum charge", RepairType::leastLabour)
            .number(
                    "free_weeks",
                    "weeks of free adjustment",
                    type -> type.freeWeeks() > 0 ? Integer.toString(type.freeWeeks()) : "");

    private static final ResultTable<Surcharge> SURCHARGES = ResultTable.<Surcharge>of(
                    "surcharges", "One row is one line of the price book that holds on a condition")
            .text("repair_type", "key of the repair", Surcharge::repairType)
            .text("when", "a class, a trait, or built-before- and a year", Surcharge::when)
            .seconds("hours", "beside the standard ones", Surcharge::seconds)
            .money("price", "beside the standard one", Surcharge::labour)
            .text("title", "its title", Surcharge::title);

    /** Writes a version's lines with conditions into a file. */
    public void surcharges(PriceBook book, Path file) throws IOException {
        SURCHARGES.writeTo(book.surcharges(), file);
    }

    /** Writes a version into a file. */
    public void write(PriceBook book, Path file) throws IOException {
        TABLE.writeTo(book.types().values(), file);
    }
}
