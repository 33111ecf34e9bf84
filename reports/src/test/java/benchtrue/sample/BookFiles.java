package benchtrue.sample;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;

/** Writes the settings and the versions of the price book. */
final class BookFiles {
    private static final String HEADER =
            "repair_type,title,family,book_hours,book_labour,least_hours,hazards,least_labour,free_weeks";
    private static final String SETTINGS = """
            # An invented shop: no real shop, person or instrument.
            currency = "USD"
            zone = "America/Chicago"
            locale = "en-US"
            shop_rate = 95

            [[breakdown]]
            title = "Fretwork, repair by repair"
            by = ["repair"]
            where = ["family = fretwork"]
            from = "24 months"
            show = ["jobs", "quoted", "taken", "load", "range", "margin"]
            picture = true

            [[breakdown]]
            title = "What each payer leaves, quarter by quarter"
            by = ["payer"]
            across = "quarter"
            from = "12 months"
            date = "closed"
            show = ["jobs", "margin"]

            [[breakdown]]
            title = "Hours of a refret, month by month"
            by = ["month"]
            where = ["repair in refret, refret-bound"]
            from = "24 months"
            show = ["each", "jobs"]
            picture = true
            """;

    private BookFiles() {}

    static void write(World world) throws IOException {
        Path folder = world.options().folder();
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("shop.toml"), SETTINGS, StandardCharsets.UTF_8);
        History history = world.history();
        if (history.firstBook() < history.secondBook()) {
            book(world, history.firstBook());
        }
        book(world, history.secondBook());
    }

    private static void book(World world, int day) throws IOException {
        Path file = world.options().folder().resolve("price-book").resolve(LocalDate.ofEpochDay(day) + ".csv");
        Row row = new Row();
        try (CsvFile book = new CsvFile(file, HEADER)) {
            for (int k = 0; k < world.catalogue().size(); k++) {
                if (world.offers(k, day)) {
                    write(row, world.catalogue().get(k), world.bookSeconds(k, day), world.shopRate(day));
                    book.write(row.end());
                }
            }
        }
    }

    private static void write(Row row, RepairSpec type, long seconds, int rate) {
        row.text(type.key()).text(type.title()).text(type.family()).hours(seconds);
        row.cents(StrictMath.round(seconds * rate / (double) Hours.SECONDS) * 100);
        if (Absent.has(type.leastSeconds())) {
            row.hours(type.leastSeconds());
        } else {
            row.blank();
        }
        row.text(type.hazards().replace(' ', ';'));
        if (type.leastLabour() == 0) {
            row.blank();
        } else {
            row.number(type.leastLabour());
        }
        row.number(type.freeWeeks());
    }
}
