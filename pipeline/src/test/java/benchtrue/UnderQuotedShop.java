package benchtrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A shop with six repairs of twelve jobs each, all of which take longer than the book. */
public final class UnderQuotedShop {
    public static final int TYPES = 6;

    private UnderQuotedShop() {}

    /**
     * Writes the shop.
     *
     * @param load hours of the shortest job of each repair per hour in the book
     */
    public static Path write(Path folder, double load) {
        List<String> tickets = new ArrayList<>(List.of("ticket,opened,closed,status,instrument_class"));
        List<String> lines = new ArrayList<>(List.of("ticket,line,repair_type,quoted_hours,quoted_labour"));
        List<String> log = new ArrayList<>(List.of("entry,ticket,line,technician,work_date,hours"));
        List<String> book = new ArrayList<>(List.of("repair_type,title,family,book_hours,book_labour"));
        for (int type = 0; type < TYPES; type++) {
            int hours = 2 + 2 * type;
            book.add("job-" + type + ",Job " + type + ",setup," + hours + "," + 100 * hours);
            for (int job = 0; job < 12; job++) {
                String ticket = "T" + type + "-" + job;
                String day = String.format(Locale.ROOT, "2026-%02d-%02d", 1 + job % 5, 3 + 2 * type);
                tickets.add(ticket + "," + day + "," + day + ",closed,archtop");
                lines.add(ticket + ",1,job-" + type + "," + hours + "," + 100 * hours);
                double took = hours * (load + job % 4 * 0.05);
                log.add("E" + ticket + "," + ticket + ",1,ann," + day + "," + String.format(Locale.ROOT, "%.2f", took));
            }
        }
        ShopFolder shop = new ShopFolder(folder);
        shop.file("exports/tickets.csv", tickets.toArray(String[]::new));
        shop.file("exports/quoted-lines.csv", lines.toArray(String[]::new));
        shop.file("exports/time-log.csv", log.toArray(String[]::new));
        shop.file("price-book/2026-01-01.csv", book.toArray(String[]::new));
        return folder;
    }
}
