package benchtrue.hours;

import benchtrue.ShopBuilder;
import java.util.Locale;
import java.util.Random;

/**
 * A shop of a few repair types whose hours follow the model that the split assumes, so that a test can ask for what went in.
 * Calls change what is not the default before {@link #build}.
 */
final class KnownShop {
    static final String[] TYPES = {"crack", "fret-level", "nut", "refret", "setup", "touch-up"};
    static final double[] BOOK = {2.5, 3, 1.75, 9, 1.25, 1.5};
    static final double[] LOAD = {1.3, 1.05, 1, 1.2, 1.1, 0.9};
    private static final String[] FAMILY = {"structural", "fretwork", "fretwork", "fretwork", "setup", "finish"};
    private static final String[] PEOPLE = {"ann", "bob", "cat"};
    private static final double[] PACE = {0.85, 1, 1.2};
    private final ShopBuilder shop = new ShopBuilder();
    private final Random random;
    private final int tickets;
    private double wholeShare = 0.6;
    private double visitHours;
    private double spread = 0.2;
    private double vintage = 1;
    private double quoteSlope = 0.6;
    private int slower = -1;

    KnownShop(long seed, int tickets) {
        random = new Random(seed);
        this.tickets = tickets;
        for (int type = 0; type < TYPES.length; type++) {
            shop.type(TYPES[type], BOOK[type], FAMILY[type]);
        }
    }

    KnownShop wholeShare(double share) {
        wholeShare = share;
        return this;
    }

    KnownShop visitHours(double hours) {
        visitHours = hours;
        return this;
    }

    KnownShop spread(double sd) {
        spread = sd;
        return this;
    }

    KnownShop vintage(double effect) {
        vintage = effect;
        return this;
    }

    /** Every second ticket's jobs of a repair take twice as long. */
    KnownShop slower(int type) {
        slower = type;
        return this;
    }

    static boolean isSlower(int ticket) {
        return ticket % 2 == 0;
    }

    ShopBuilder build() {
        for (int ticket = 0; ticket < tickets; ticket++) {
            add(ticket);
        }
        return shop;
    }

    private void add(int ticket) {
        boolean old = random.nextInt(3) == 0;
        int person = random.nextInt(PEOPLE.length);
        shop.ticket(String.format(Locale.ROOT, "t%05d", ticket)).of(old ? "vintage" : "modern", "wren");
        boolean whole = random.nextDouble() < wholeShare;
        double unnamed = whole ? visitHours : 0;
        int lines = 1 + random.nextInt(3);
        int first = random.nextInt(TYPES.length);
        for (int line = 0; line < lines; line++) {
            int type = (first + line * (1 + random.nextInt(2))) % TYPES.length;
            double condition = 0.12 * random.nextGaussian();
            double quoted = Math.max(0.25, Math.round(4 * BOOK[type] * Math.exp(condition)) / 4.0);
            double noise = Math.exp(spread * random.nextGaussian() - spread * spread / 2);
            double hours = BOOK[type]
                    * LOAD[type]
                    * PACE[person]
                    * (old ? vintage : 1)
                    * (type == slower && isSlower(ticket) ? 2 : 1)
                    * Math.exp(quoteSlope * condition)
                    * noise;
            hours = Math.max(0.02, Math.round(hours * 50) / 50.0);
            shop.line(TYPES[type], quoted);
            if (whole) {
                unnamed += hours;
            } else {
                shop.logged(PEOPLE[person], Integer.toString(line + 1), hours);
            }
        }
        if (whole) {
            shop.whole(PEOPLE[person], Math.round(unnamed * 100) / 100.0);
        }
    }
}
