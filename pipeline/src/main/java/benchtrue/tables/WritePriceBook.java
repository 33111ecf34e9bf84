package benchtrue.tables;

import benchtrue.shop.PriceBook;
import benchtrue.shop.RepairType;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Writes one version of the price book as the program reads it. */
public final class WritePriceBook {
    private static final List<String> HEADER = List.of(
            "repair_type",
            "title",
            "family",
            "book_hours",
            "book_labour",
            "least_hours",
            "hazards",
            "least_labour",
            "free_weeks");

    /** Writes a version into a file. */
    public void write(PriceBook book, Path file) throws IOException {
        try (CsvFile csv = CsvFile.create(file, HEADER)) {
            for (RepairType type : book.types().values()) {
                csv.text(type.repairType())
                        .text(type.title())
                        .text(type.family())
                        .hours(type.bookSeconds())
                        .money(type.bookLabour())
                        .hours(type.leastSeconds())
                        .text(String.join(";", type.hazards()))
                        .money(type.leastLabour());
                if (type.freeWeeks() > 0) {
                    csv.count(type.freeWeeks());
                } else {
                    csv.decimal("");
                }
                csv.endRow();
            }
        }
    }
}
