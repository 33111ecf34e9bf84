package benchtrue.reconcile;

import benchtrue.ShopFolder;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** Writes a random shop in the contract's own files that every shape can hold: one entry a day, person and ticket. */
final class TidyShop {
    private static final LocalDate FIRST = LocalDate.of(2025, 9, 1);
    private static final List<String> BOOK = List.of(
            "refret,Refret on an unbound board,fretwork,9,900",
            "full-setup,Full setup,setup,1.25,120",
            "neck-reset,Neck reset,structural,10,1000",
            "nut-replace,Make and fit a bone nut,fretwork,1.75,175",
            "pickup-install,Install a pickup,electronics,1.75,180",
            "crack-repair,Glue and cleat a crack,structural,2.5,260");
    private static final String[] CLASSES = {"flat-top", "archtop", "electric", "banjo"};
    private static final String[] KEYS = {"B-%d", "%d", "T%d", "2025/%d"};
    private static final String[] PEOPLE = {"Ada", "Bo", "Cyril"};

    private final Random random;
    private final ShopFolder shop;

    private TidyShop(Path folder, long seed) {
        random = new Random(seed);
        shop = new ShopFolder(folder);
    }

    static void write(Path folder, long seed) {
        new TidyShop(folder, seed).write();
    }

    private void write() {
        List<String> tickets = new ArrayList<>(List.of("ticket,opened,closed,status,instrument_class"));
        List<String> lines = new ArrayList<>(List.of("ticket,line,repair_type,quoted_hours,quoted_labour"));
        Map<String, String> log = new TreeMap<>();
        String key = KEYS[random.nextInt(KEYS.length)];
        for (int number = 0; number < 30 + random.nextInt(30); number++) {
            String ticket = String.format(key, 1_001 + number);
            LocalDate opened = FIRST.plusDays(5L * number + random.nextInt(5));
            lines(ticket, lines);
            LocalDate ended = work(ticket, opened, log);
            tickets.add(ticket + "," + opened + "," + ended.plusDays(random.nextInt(4)) + ",closed,"
                    + CLASSES[random.nextInt(CLASSES.length)]);
        }
        List<String> entries = new ArrayList<>(List.of("ticket,technician,work_date,hours"));
        log.forEach((where, hours) -> entries.add(where + "," + hours));
        List<String> book = new ArrayList<>(List.of("repair_type,title,family,book_hours,book_labour"));
        book.addAll(BOOK);
        shop.file("exports/tickets.csv", tickets.toArray(String[]::new))
                .file("exports/quoted-lines.csv", lines.toArray(String[]::new))
                .file("exports/time-log.csv", entries.toArray(String[]::new))
                .without("price-book/2026-01-01.csv")
                .file("price-book/2025-09-01.csv", book.toArray(String[]::new));
    }

    private void lines(String ticket, List<String> lines) {
        for (int line = 1; line <= 1 + random.nextInt(3); line++) {
            String[] repair = BOOK.get(random.nextInt(BOOK.size())).split(",");
            double hours = Double.parseDouble(repair[3]) + 0.25 * random.nextInt(4);
            lines.add(ticket + "," + line + "," + repair[0] + "," + hours + "," + Math.round(98 * hours));
        }
    }

    /** Returns the last day of work. */
    private LocalDate work(String ticket, LocalDate opened, Map<String, String> log) {
        LocalDate day = opened;
        for (int stretch = 0; stretch < 2 + random.nextInt(4); stretch++) {
            day = day.plusDays(1 + random.nextInt(3));
            day = day.getDayOfWeek() == DayOfWeek.SUNDAY ? day.plusDays(1) : day;
            String where = random.nextInt(12) == 0 ? "" : ticket;
            String hours = (1 + random.nextInt(5)) + "." + (random.nextInt(2) == 0 ? "25" : 10 + random.nextInt(90));
            log.put(where + "," + PEOPLE[random.nextInt(PEOPLE.length)] + "," + day, hours);
        }
        return day;
    }
}
