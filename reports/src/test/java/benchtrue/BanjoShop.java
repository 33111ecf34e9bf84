package benchtrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Random;

/** A shop of nuts and setups in turn, where nuts on banjos take twice as long. Mutable: jobs are added and written. */
public final class BanjoShop {
    private final Path shop;
    private final StringBuilder tickets = new StringBuilder("ticket,opened,closed,status,instrument_class\n");
    private final StringBuilder lines =
            new StringBuilder("ticket,line,repair_type,quoted_hours,quoted_labour,outcome\n");
    private final StringBuilder log = new StringBuilder("entry,ticket,line,technician,work_date,hours\n");
    private final Random random = new Random(3);

    /** Writes the shop with 220 jobs, all quoted at the book. */
    public BanjoShop(Path shop) throws IOException {
        this.shop = shop;
        Files.createDirectories(shop.resolve("exports"));
        Files.createDirectories(shop.resolve("price-book"));
        Files.writeString(shop.resolve("shop.toml"), "currency = \"EUR\"\nshop_rate = 100\n");
        Files.writeString(
                shop.resolve("price-book/2023-01-01.csv"),
                "repair_type,title,family,book_hours,book_labour\n"
                        + "nut,Nut,fretwork,2,200\nsetup,Setup,setup,1.5,150\n");
        jobs("A", LocalDate.of(2024, 1, 8), 220, 4, 2);
    }

    /** Adds jobs and writes the exports, each job quoted at the book. */
    public void jobs(String key, LocalDate from, int count, int apart, double banjoQuote) throws IOException {
        for (int i = 0; i < count; i++) {
            boolean nut = i % 2 == 0;
            boolean banjo = random.nextInt(4) == 0;
            double quoted = nut ? (banjo ? banjoQuote : 2) : 1.5;
            double taken = (nut ? (banjo ? 4 : 2) : 1.5) * Math.exp(0.15 * random.nextGaussian());
            LocalDate day = from.plusDays((long) i * apart);
            tickets.append(String.format(
                    Locale.ROOT,
                    "%s%03d,%s,%s,closed,%s%n",
                    key,
                    i,
                    day,
                    day.plusDays(3),
                    banjo ? "banjo" : "flat-top"));
            lines.append(String.format(
                    Locale.ROOT,
                    "%s%03d,1,%s,%.2f,%.0f,accepted%n",
                    key,
                    i,
                    nut ? "nut" : "setup",
                    quoted,
                    100 * quoted));
            log.append(String.format(
                    Locale.ROOT, "E%s%03d,%s%03d,1,Ada,%s,%.2f%n", key, i, key, i, day.plusDays(1), taken));
        }
        Files.writeString(shop.resolve("exports/tickets.csv"), tickets);
        Files.writeString(shop.resolve("exports/quoted-lines.csv"), lines);
        Files.writeString(shop.resolve("exports/time-log.csv"), log);
    }
}
