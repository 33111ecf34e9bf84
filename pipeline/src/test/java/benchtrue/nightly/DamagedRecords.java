package benchtrue.nightly;

import benchtrue.MutatedBytes;
import benchtrue.ShopBuilder;
import benchtrue.costing.SealedMonth;
import benchtrue.costing.SealedMonth.Figure;
import benchtrue.costing.SealedMonth.Part;
import benchtrue.revision.DecidedDraft;
import benchtrue.revision.Decision;
import benchtrue.revision.SurchargeDecision;
import benchtrue.shop.Absent;
import benchtrue.shop.PriceBook;
import benchtrue.shop.Refusal;
import benchtrue.shop.RepairType;
import benchtrue.shop.Surcharge;
import benchtrue.tables.SealFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * Damages what a shop keeps for ever, a file at a time, and reads it again: it must say what it said, or be refused by name. The
 * number of a damage tells it.
 */
final class DamagedRecords {
    private static final int SEPTEMBER = 2026 * 12 + 8;
    private static final LocalDate DECIDED = LocalDate.of(2026, 10, 31);
    private static final LocalDate EFFECTIVE = LocalDate.of(2027, 1, 1);

    private final Path shop;
    private final String said;
    private int refused;

    DamagedRecords(Path shop) throws IOException {
        this.shop = shop;
        BookFiles files = new BookFiles(shop);
        Path sitting = files.keep(EFFECTIVE, "", sitting());
        files.keep(
                EFFECTIVE,
                ".withdrawn",
                DecisionRecord.withdrawal(
                        new Withdraw.Request(EFFECTIVE, DECIDED.plusDays(1), "Orla", "the press came"),
                        List.of(sitting.getFileName().toString())));
        WholeFile.write(
                shop.resolve(Seals.FOLDER).resolve(SealFile.name(SEPTEMBER)),
                partial -> SealFile.write(month(), partial));
        said = said();
    }

    private static String sitting() {
        PriceBook before = new ShopBuilder()
                .type("refret", 8)
                .type("setup", 2)
                .build()
                .books()
                .newest();
        RepairType refret = before.type("refret").orElseThrow();
        PriceBook next = new PriceBook(
                (int) EFFECTIVE.toEpochDay(), Map.of("refret", refret.at(36_000, 10_000_000), "setup", setup(before)));
        DecidedDraft draft = new DecidedDraft(
                "0123456789abcdef",
                "price-book-revision.xlsx",
                List.of(
                        decision("refret", Decision.Choice.OWN, Absent.DAY),
                        decision("setup", Decision.Choice.KEEP, 21_000)),
                List.of(new SurchargeDecision(
                        new Surcharge("refret", "twelve-string", 3_600, 1_000_000, "Refret, twelve strings"),
                        SurchargeDecision.Choice.TAKE,
                        "Refret, twelve strings",
                        new Decision.Cell("Surcharges", "F5"))),
                List.of());
        return DecisionRecord.sitting(
                before,
                next,
                draft,
                new Adoption(EFFECTIVE, DECIDED, "Orla", Optional.empty(), Adoption.LaterBook.ASK),
                "fedcba9876543210");
    }

    private static RepairType setup(PriceBook book) {
        return book.type("setup").orElseThrow();
    }

    private static Decision decision(String key, Decision.Choice choice, int until) {
        return new Decision(
                key, key, choice, 1, 1, 1, 1, "Né \"so\", <gut>", until, new Decision.Cell("Decide", "J14"));
    }

    private static SealedMonth month() {
        return new SealedMonth(
                SEPTEMBER,
                (int) DECIDED.toEpochDay(),
                List.of(
                        new Figure(Part.RATE, "", "burden", "0.3"),
                        new Figure(Part.EARNED, "T,1", "labour_cost", "130.0000"),
                        new Figure(Part.WORKED, "=T2", "logged_hours", "5.0000"),
                        new Figure(Part.OVERHEAD, "rent", "amount", "")));
    }

    /** Returns the files of decisions, or of sealed months. */
    List<Path> files(String folder) {
        return Inputs.files(shop.resolve(folder), "");
    }

    int refused() {
        return refused;
    }

    /** Damages files of a folder in turn, up to three times each, from one number of damage to another. */
    void damage(String folder, int first, int end) throws IOException {
        List<Path> files = files(folder);
        for (int number = first; number < end; number++) {
            Random random = new Random(number);
            Path file = files.get(number % files.size());
            byte[] whole = Files.readAllBytes(file);
            byte[] damaged = whole;
            for (int times = random.nextInt(3); times >= 0; times--) {
                damaged = MutatedBytes.of(damaged, random);
            }
            read(file, whole, damaged, "damage " + number + " to " + file.getFileName());
        }
    }

    /** Reads the shop with a damaged file, which it has whole again afterwards. */
    void read(Path file, byte[] whole, byte[] damaged, String which) throws IOException {
        Files.write(file, damaged);
        try {
            String now = said();
            if (!now.equals(said)) {
                throw new AssertionError(which + ": unsaid, the records say " + now + ", not " + said);
            }
        } catch (Refusal refusal) {
            refused++;
            if (!refusal.getMessage().contains(file.getFileName().toString())) {
                throw new AssertionError(which + ": the message names no file: " + refusal.getMessage(), refusal);
            }
        } catch (RuntimeException | Error fault) {
            throw new AssertionError(which, fault);
        } finally {
            Files.write(file, whole);
        }
    }

    private String said() {
        return DecisionFiles.of(shop) + "\n" + Seals.of(shop);
    }
}
