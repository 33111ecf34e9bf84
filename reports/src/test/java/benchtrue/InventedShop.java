package benchtrue;

import benchtrue.nightly.Review;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Disclosure;
import benchtrue.settings.Settings;
import benchtrue.shop.CostBehaviour;
import benchtrue.shop.ReturnReason;
import benchtrue.shop.TimeKind;
import benchtrue.shop.WaitReason;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;

/** A small invented shop and its review, for tests of what a person sees: some repairs under-quoted, some over, some rare. */
public final class InventedShop {
    /** Titles of its repair types. */
    public static final List<String> TITLES = List.of(
            "Refret, bound board",
            "Setup",
            "Nut, bone",
            "Brace reglue",
            "Finish touch-up",
            "Pickup swap",
            "Neck reset",
            "Crack repair");

    private static final double[] BOOK = {9, 1.5, 1.25, 2.5, 3, 1, 14, 4};
    private static final double[] LOAD = {1.35, 1.0, 1.2, 0.75, 1.0, 1.5, 1.1, 1.0};
    private final ShopBuilder shop = new ShopBuilder().asOf("2026-10-31");
    private final Random random = new Random(7);

    private InventedShop() {}

    /** Returns the review of a night at this shop. */
    public static Review review() {
        return review(TITLES, 240, settings("en", "EUR"));
    }

    /** Returns settings of a region and currency. */
    public static Settings settings(String locale, String currency) {
        return settings(locale, currency, Disclosure.HIDDEN);
    }

    /** Returns settings of a region and currency under which figures about people and the wall copy are shown or not. */
    public static Settings settings(String locale, String currency, Disclosure all) {
        return new ShopSettings()
                .currency(currency)
                .locale(locale)
                .shopRate(100 * 10_000L)
                .materiality(100 * 10_000L)
                .resamples(200)
                .people(all)
                .wallCopy(all)
                .build();
    }

    /** Returns the review of a shop with these repair titles and so many tickets. */
    public static Review review(List<String> titles, int tickets, Settings settings) {
        return reviewOf(new InventedShop().ledger(titles, tickets), settings);
    }

    /** Runs every stage on a ledger. */
    public static Review reviewOf(Ledger ledger, Settings settings) {
        return ReviewOf.ledger(ledger, settings);
    }

    private Ledger ledger(List<String> titles, int tickets) {
        for (String version : List.of("2022-01-01", "2025-01-01")) {
            shop.book(version);
            for (int type = 0; type < titles.size(); type++) {
                shop.type(TypeRow.of(
                        key(type), titles.get(type), version.startsWith("2022") ? 0.9 * book(type) : book(type)));
            }
        }
        shop.wage("ann", 24, "2022-01-01").wage("bo", 31, "2022-01-01");
        shop.overhead("2026-01", "rent", 2400, CostBehaviour.FIXED);
        for (int i = 0; i < tickets; i++) {
            ticket(titles.size(), i, tickets);
        }
        return shop.build();
    }

    private void ticket(int types, int number, int tickets) {
        LocalDate opened = LocalDate.of(2024, 1, 8).plusDays((long) number * 1000 / tickets);
        shop.ticket(String.format(java.util.Locale.ROOT, "T%05d", number)).opened(opened.toString());
        boolean whole = random.nextInt(10) < 4;
        int lines = 1 + random.nextInt(2);
        double hours = 0;
        for (int line = 1; line <= lines; line++) {
            int type = (number + line * 3) % types;
            double quoted = Math.round(4 * book(type) * (0.9 + 0.3 * random.nextDouble())) / 4.0;
            double taken = quoted * LOAD[type % LOAD.length] * Math.exp(0.25 * random.nextGaussian());
            taken = Math.max(0.1, Math.round(taken * 10) / 10.0);
            shop.line(key(type), quoted);
            hours += taken;
            if (!whole) {
                shop.logged(line == 1 ? "ann" : "bo", Integer.toString(line), taken);
            }
        }
        if (whole) {
            shop.whole("bo", Math.round(hours * 100) / 100.0);
        }
        extras(opened, number);
    }

    private void extras(LocalDate opened, int number) {
        if (number % 8 == 0) {
            shop.time("ann", TimeKind.QUOTING, 0.5).time("bo", TimeKind.HANDLING, 0.25);
        }
        if (number % 12 == 5) {
            WaitReason reason = WaitReason.values()[number % WaitReason.values().length];
            shop.waited(opened.toString(), opened.plusDays(3 + number % 20).toString(), reason);
        }
        if (number % 30 == 29) {
            shop.line(key(0), 1)
                    .putsRight(String.format(java.util.Locale.ROOT, "T%05d", number - 20), "1", ReturnReason.OUR_FAULT);
        }
    }

    private static double book(int type) {
        return BOOK[type % BOOK.length];
    }

    private static String key(int type) {
        return String.format(java.util.Locale.ROOT, "type-%03d", type);
    }
}
