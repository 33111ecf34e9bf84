package benchtrue.sample;

import benchtrue.shop.ChargeKind;
import java.io.Closeable;
import java.io.IOException;

/** Writes {@code parts-usage}. */
final class PartRows implements Closeable {
    private static final String HEADER = "use,ticket,line,part,quantity,unit_cost,unit_charge,used_on,kind";
    private static final int OUTSIDE_CENTS = 8_000;
    private static final double SUPPLIES = 0.08;

    private final World world;
    private final CsvFile file;
    private final Row row = new Row();

    private long uses;

    PartRows(World world) throws IOException {
        this.world = world;
        this.file = new CsvFile(world.options().folder().resolve("exports/parts-usage.csv"), HEADER);
    }

    /** Returns what parts of a line are charged at, in cents; 0 for a line without parts. */
    static long chargeCents(World world, Visit visit, Line line) {
        if (line.terms().kind() == ChargeKind.OUTSIDE_WORK) {
            return OUTSIDE_CENTS * 5 / 4;
        }
        if (line.type() == Catalogue.ONE_OFF || visit.back().failed()) {
            return 0;
        }
        return marked(world.catalogue().get(line.type()).partCents());
    }

    private static long marked(long cents) {
        return cents * 8 / 5;
    }

    void take(Worked worked) throws IOException {
        Visit visit = worked.visit();
        Dice dice = new Dice(world.options().seed(), Dice.Stream.PARTS, visit.index());
        for (int i = 0; i < worked.lines().size(); i++) {
            Line line = worked.lines().get(i);
            if (line.terms().kind() == ChargeKind.OUTSIDE_WORK && worked.finished() <= History.AS_OF) {
                write(
                        visit.ticket(),
                        line.number(),
                        "outside work",
                        1,
                        OUTSIDE_CENTS,
                        "outside-work",
                        worked.finished());
            } else if (worked.loggedSeconds()[i] > 0 && line.type() != Catalogue.ONE_OFF) {
                part(worked, line, dice);
            }
        }
        if (dice.chance(SUPPLIES) && !worked.sessions().isEmpty()) {
            write("", 0, "abrasive paper", 1 + dice.below(4), 620, "supply", visit.opened());
        }
    }

    private void part(Worked worked, Line line, Dice dice) throws IOException {
        RepairSpec spec = world.catalogue().get(line.type());
        double spread = StrictMath.exp(0.12 * dice.normal());
        if (spec.partCents() > 0) {
            long cents = (long) (spec.partCents() * spread);
            int day = worked.sessions().isEmpty()
                    ? worked.visit().opened()
                    : worked.sessions().get(0).day();
            write(worked.visit().ticket(), line.number(), spec.part(), 1, cents, "part", day);
        }
    }

    private void write(String ticket, int line, String part, int quantity, long cents, String kind, int day)
            throws IOException {
        row.text("U" + ++uses).text(ticket);
        if (line == 0) {
            row.blank();
        } else {
            row.number(line);
        }
        row.text(part).number(quantity).cents(cents);
        if (ticket.isEmpty()) {
            row.blank();
        } else {
            row.cents(marked(cents));
        }
        file.write(row.day(day).text(kind).end());
    }

    /** Writes a part whose ticket, quantity or cost is not what it should be. */
    void writeFaulty(String ticket, long quantity, String cost, int day) throws IOException {
        row.text("U" + ++uses).text(ticket).blank().text("fret-wire").number(quantity);
        file.write(row.text(cost).text("24").anyDay(day).text("part").end());
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
