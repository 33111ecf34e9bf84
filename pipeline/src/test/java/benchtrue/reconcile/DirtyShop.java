package benchtrue.reconcile;

import benchtrue.ShopFolder;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Writes a random shop with every kind of untidy row, and keeps count of the hours it wrote: an account of its own that the
 * balances are held against.
 */
final class DirtyShop {
    static final String PERSONAL = "Orla Quist +1 555 0100, 9 Elm Row";
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
    private static final String[] TYPES = {"refret", "setup", "neck-reset", "one-off", "no-such-type", "Refret "};
    private static final String[] PEOPLE = {"Ada", "Bo", "Cy", ""};
    private final Random random;
    private final ShopFolder shop;
    private final int entries;
    private final List<String> tickets = new ArrayList<>();
    private BigDecimal hoursWritten = BigDecimal.ZERO;

    DirtyShop(Path folder, long seed) {
        this(folder, seed, 200);
    }

    DirtyShop(Path folder, long seed, int entries) {
        this.entries = entries;
        random = new Random(seed);
        shop = new ShopFolder(folder);
        book("2026-01-01");
        book("2026-07-01");
        tickets();
        lines();
        timeLog();
        parts();
        small();
    }

    ShopFolder shop() {
        return shop;
    }

    /** Returns all readable hours written to the time log, in seconds, exactly. */
    BigDecimal secondsWritten() {
        return hoursWritten;
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private String pick(String... of) {
        return of[random.nextInt(of.length)];
    }

    private String day() {
        if (chance(3)) {
            return pick("", "2026-02-30", "12.3.2026", "0026-03-03", "soon", "2027-01-05", "2026-3-4");
        }
        return FIRST.plusDays(random.nextInt(290)).toString();
    }

    private String amount() {
        if (chance(4)) {
            return pick("", "abc", "-5", "\"1,5\"", "99999999999999", "12.3456", "0.123456789", "1e3", "0", " 7 ");
        }
        return random.nextInt(400) + "." + random.nextInt(10);
    }

    private void book(String date) {
        shop.file(
                "price-book/" + date + ".csv",
                "repair_type,title,family,book_hours,book_labour,hazards",
                "refret,Refret,fretwork,12,1200,dust",
                "binding,Binding,structural,soon,600,",
                "setup,Setup,setup,1.5,150,",
                "neck-reset,Neck reset,structural," + amount() + ",1500,",
                chance(30) ? "fret-dress,,fretwork,2,200," : "fret-dress,Fret dress,fretwork,2,200,");
    }

    private String ticket() {
        if (chance(4)) {
            return pick("", "T999", "t1", "T01", "T1 ", "=T1");
        }
        return tickets.isEmpty() ? "T0" : tickets.get(random.nextInt(tickets.size()));
    }

    private void tickets() {
        List<String> rows = new ArrayList<>();
        for (int i = 0; i < 25; i++) {
            tickets.add("T" + i);
            rows.add(dirty("T" + i + "," + day() + "," + (chance(60) ? day() : "") + ","
                    + pick("", "open", "closed", "void", "lost") + ",flat-top," + pick("", "bound-board;twelve-string")
                    + "," + (chance(10) ? ticket() : "")));
        }
        spread("tickets", "ticket,opened,closed,status,instrument_class,traits,rework_of", rows);
    }

    private void lines() {
        List<String> rows = new ArrayList<>();
        for (int i = 0; i < 10 + entries / 4; i++) {
            rows.add(
                    dirty(ticket() + "," + random.nextInt(4) + "," + pick(TYPES) + "," + amount() + "," + amount() + ","
                            + amount() + "," + pick("", "accepted", "declined") + "," + pick("", "", day()) + ","
                            + pick("", "package", "rush") + "," + (chance(5) ? ticket() : "") + ",1"));
        }
        spread(
                "quoted-lines",
                "ticket,line,repair_type,quoted_hours,quoted_labour,billed_labour,outcome,quoted_on,charge_kind,"
                        + "rework_of,rework_of_line",
                rows);
    }

    /** Rows of the time log are spread over overlapping files; what each file holds is added to the account. */
    private void timeLog() {
        boolean keyed = chance(70);
        List<Entry> rows = new ArrayList<>();
        for (int i = 0; i < entries; i++) {
            rows.add(entry(keyed ? "E" + (chance(5) ? random.nextInt(20) : i) : ""));
        }
        String header = "entry,ticket,line,repair_type,technician,work_date,hours,start,end,kind,note,customer_phone";
        for (int file = 0; file < 1 + random.nextInt(4); file++) {
            List<String> lines = new ArrayList<>();
            lines.add(header);
            for (Entry row : rows) {
                for (int times = chance(60) ? chance(5) ? 2 : 1 : 0; times > 0; times--) {
                    lines.add(row.text);
                    hoursWritten = hoursWritten.add(row.seconds);
                }
            }
            lines.add("E1,T1,1," + PERSONAL + ",Ada,2026-03-03,2,,,,,");
            lines.add(PERSONAL + ",2,2,2,2,2,2,2");
            shop.file("exports/time-log-2026-0" + (file + 1) + ".csv", lines.toArray(String[]::new));
        }
        shop.file("exports/time-log.csv", header);
    }

    /** A row of the time log and the readable seconds in it. */
    private record Entry(String text, BigDecimal seconds) {}

    private Entry entry(String key) {
        String where = key + "," + (chance(10) ? ticket() + ";" + ticket() : chance(10) ? "" : ticket()) + ","
                + pick("", "1", "2", "9") + "," + (chance(10) ? pick(TYPES) : "") + "," + pick(PEOPLE) + "," + day()
                + ",";
        String tail = "," + pick("", "", "bench", "handling", "shop", "dance") + ",\"a note, \"\"quoted\"\" by "
                + PERSONAL + "\",\"" + PERSONAL + "\"";
        if (chance(25)) {
            int start = random.nextInt(24 * 60);
            int end = chance(90) ? Math.min(24 * 60 - 1, start + random.nextInt(240)) : random.nextInt(24 * 60);
            int span = end >= start ? end - start : end - start + 24 * 60;
            boolean readable = end >= start || span <= 12 * 60;
            return new Entry(
                    where + "," + clock(start) + "," + clock(end) + tail,
                    BigDecimal.valueOf(readable ? span * 60L : 0));
        }
        if (chance(4)) {
            return new Entry(where + pick("", "x", "1:75", "\"1,5\"", "9999999999") + ",," + tail, BigDecimal.ZERO);
        }
        BigDecimal hours = chance(10)
                ? new BigDecimal("0.333333").multiply(BigDecimal.valueOf(1 + random.nextInt(3)))
                : BigDecimal.valueOf(random.nextInt(chance(3) ? 3000 : 800) - (chance(10) ? 400 : 0), 2);
        return new Entry(where + hours.toPlainString() + ",," + tail, hours.multiply(BigDecimal.valueOf(3600)));
    }

    private static String clock(int minutes) {
        return minutes / 60 + ":" + (minutes % 60 < 10 ? "0" : "") + minutes % 60;
    }

    private void parts() {
        List<String> rows = new ArrayList<>();
        for (int i = 0; i < 10 + entries / 4; i++) {
            rows.add(dirty(pick("", "U" + i) + "," + ticket() + "," + pick("", "1", "9") + ","
                    + pick("fretwire", "nut", "") + "," + amount() + "," + amount() + "," + amount() + "," + day() + ","
                    + pick("", "supply", "outside-work")));
        }
        spread("parts-usage", "use,ticket,line,part,quantity,unit_cost,unit_charge,used_on,kind", rows);
    }

    private void small() {
        List<String> wages = new ArrayList<>();
        List<String> paid = new ArrayList<>();
        List<String> overheads = new ArrayList<>();
        List<String> waits = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            String month = pick("2026-0" + (1 + random.nextInt(9)), "2026-13", "2026-12", "");
            wages.add(dirty(pick(PEOPLE) + "," + amount() + "," + day() + "," + pick("", "senior")));
            paid.add(dirty(pick(PEOPLE) + "," + month + "," + amount()));
            overheads.add(dirty(month + "," + pick("rent", "light", "") + "," + amount()));
            waits.add(dirty(ticket() + "," + day() + "," + day() + "," + pick("parts", "glue-curing", "holiday")));
        }
        spread("technicians", "technician,hourly_wage,effective_from,grade", wages);
        spread("paid-hours", "technician,month,hours", paid);
        spread("overheads", "month,account,amount", overheads);
        spread("waits", "ticket,from,to,reason", waits);
    }

    /** Makes a row's form untidy now and then. */
    private String dirty(String row) {
        return switch (random.nextInt(60)) {
            case 0 -> row + ",surplus";
            case 1 -> row.contains("\"") ? row : row.substring(0, row.lastIndexOf(','));
            case 2 -> row.replaceFirst(",", "\u0001,");
            case 3 -> "\"" + row.replaceFirst(",", "\n\",");
            default -> row;
        };
    }

    /** A comma in a customer's name slips the cells; but not in a row that lacks one, where nobody could tell. */
    private String customer(String row, String header) {
        boolean whole = row.split(",", -1).length >= header.split(",").length;
        return whole && chance(3) ? PERSONAL : PERSONAL.replace(",", "");
    }

    private void spread(String table, String header, List<String> rows) {
        for (int file = 0; file < 3; file++) {
            List<String> lines = new ArrayList<>(List.of(header + ",customer"));
            for (String row : rows) {
                if (chance(60)) {
                    lines.add(row + "," + customer(row, header));
                }
            }
            shop.file("exports/" + table + (file == 0 ? "" : "-2026-0" + file) + ".csv", lines.toArray(String[]::new));
        }
    }
}
