package benchtrue.costing;

import benchtrue.ShopBuilder;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.CostBehaviour;
import benchtrue.shop.PaidBy;
import benchtrue.shop.ReturnReason;
import benchtrue.shop.TimeKind;
import java.util.SplittableRandom;

/** A shop of two years with something of everything: for properties that hold for any shop. */
final class RandomShop {
    private static final String[] TYPES = {"refret", "setup", "neck-reset", "wiring"};
    private static final PaidBy[] PAYERS = PaidBy.values();
    private final SplittableRandom random;
    private final ShopBuilder shop = new ShopBuilder().asOf("2026-06-30");

    private RandomShop(long seed) {
        random = new SplittableRandom(seed);
    }

    static ShopBuilder of(long seed) {
        return new RandomShop(seed).build();
    }

    private ShopBuilder build() {
        shop.type("refret", 10)
                .type("setup", 1.5, "setup")
                .type("neck-reset", 14, "structural")
                .type("wiring", 2, "electronics")
                .part("", "glue", 1.37, 3.1)
                .time("ada", TimeKind.SHOP, 3.3333)
                .wage("ada", 23.4567, "2020-01-01")
                .wage("ben", 31.17, "2026-02-03")
                .wage("cyd", 19.99, "2020-01-01");
        for (int month = 0; month < 18; month++) {
            String name = "%d-%02d".formatted(2025 + month / 12, month % 12 + 1);
            shop.overhead(name, "rent", 800 + random.nextInt(100_000) / 97.0, CostBehaviour.FIXED)
                    .overhead(name, "power", random.nextInt(100_000) / 997.0, CostBehaviour.VARIABLE)
                    .paid("ada", name, 80 + random.nextInt(90));
        }
        for (int ticket = 0; ticket < 90; ticket++) {
            ticket(ticket);
        }
        return shop.shared("ada", 4.4444, "T101", "T105", "T117");
    }

    private void ticket(int number) {
        int month = random.nextInt(18);
        shop.ticket("T" + (100 + number))
                .opened("%d-%02d-%02d".formatted(2025 + month / 12, month % 12 + 1, 1 + random.nextInt(25)));
        int lines = random.nextInt(4);
        for (int line = 0; line < lines; line++) {
            line(number);
        }
        shop.whole("ada", random.nextInt(1, 900) / 97.0).time("ada", TimeKind.HANDLING, 0.21);
        shop.whole("ben", random.nextInt(1, 900) / 97.0).part("", "wire", random.nextInt(1, 50) / 7.0, price());
        if (lines > 0) {
            shop.logged("cyd", "1", random.nextInt(1, 400) / 71.0).part("1", "nut", 1, price());
        }
        if (random.nextInt(4) == 0) {
            shop.did("cyd", TYPES[random.nextInt(4)], 0.77).time("ada", TimeKind.QUOTING, 0.4);
        }
        switch (random.nextInt(12)) {
            case 0 -> shop.voided();
            case 1, 2 -> shop.stillOpen();
            default -> {}
        }
    }

    private double price() {
        return 1 + random.nextInt(1, 100_000) / 9_999.0;
    }

    private void line(int number) {
        shop.line(TYPES[random.nextInt(4)], 1 + random.nextInt(80) / 7.0);
        switch (random.nextInt(9)) {
            case 0 -> shop.declined();
            case 1 -> shop.paidBy(PAYERS[random.nextInt(PAYERS.length)]);
            case 2 -> shop.charged(ChargeKind.MINIMUM);
            case 3 -> {
                if (number > 20) {
                    shop.putsRight("T" + (100 + random.nextInt(20)), "", ReturnReason.OUR_FAULT);
                }
            }
            default -> {}
        }
    }
}
