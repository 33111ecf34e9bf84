package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.revision.CellFault;
import benchtrue.revision.DecidedDraft;
import benchtrue.revision.Decision;
import benchtrue.revision.ProposedChange;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.PriceBook;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.Refusal;
import benchtrue.shop.RepairType;
import benchtrue.tables.WriteTables;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;

/** An owner who runs nights, adopts, withdraws and changes their mind, and who remembers what was decided. */
final class OwnerThroughTime {
    private static final long HUNDRED = 1_000_000;

    /** What a row was decided to be: hours, price, and until when it is kept. */
    private record Remembered(long seconds, long labour, int until) {}

    private final Path shop;
    private final SplittableRandom random;
    private final String seed;
    private final TreeMap<Integer, Map<String, Remembered>> decided = new TreeMap<>();
    private final TreeSet<Integer> withdrawn = new TreeSet<>();
    private final Map<Path, byte[]> inForce = new HashMap<>();
    private final Map<String, Integer> onThisDraft = new HashMap<>();
    private LocalDate today = LocalDate.of(2026, 7, 1);
    private Review review;
    private String draft;
    private int adopted;

    OwnerThroughTime(Path shop, long seed) {
        this.shop = shop;
        this.random = new SplittableRandom(seed);
        this.seed = "seed " + seed;
    }

    int adopted() {
        return adopted;
    }

    void step() throws IOException {
        switch (random.nextInt(8)) {
            case 0, 1 -> {
                today = today.plusDays(1 + random.nextInt(50));
                night();
            }
            case 2 -> withdraw();
            case 3 -> night();
            default -> adopt();
        }
    }

    void night() throws IOException {
        Published night = new Night(List.of(), Progress.UNHEARD, Clock.systemUTC(), "test")
                .run(shop, Settings.DEFAULTS, (int) today.toEpochDay());
        review = night.review();
        String digest = FileDigest.of(shop, night.folder().resolve(WriteTables.REVISION))
                .sha256();
        if (!digest.equals(draft)) {
            onThisDraft.clear();
        }
        draft = digest;
        nothingDecidedIsAskedAgain();
    }

    private void nothingDecidedIsAskedAgain() {
        int asOf = (int) today.toEpochDay();
        PriceBook newest = books().newest();
        for (ProposedChange change : review.revision().changes()) {
            String key = key(change);
            RepairType row = newest.type(key).orElseThrow();
            assertThat(change.bookSeconds()).as(seed + " " + key).isEqualTo(row.bookSeconds());
            assertThat(change.bookLabour()).as(seed + " " + key).isEqualTo(row.bookLabour());
            boolean pending = decided.tailMap(asOf, false).values().stream().anyMatch(rows -> rows.containsKey(key));
            boolean kept =
                    newestDecision(key).filter(row2 -> row2.until() > asOf).isPresent();
            if (pending || kept) {
                assertThat(change.changes())
                        .as(seed + ", " + today + ": " + key)
                        .isFalse();
                assertThat(change.heldBecause()).as(seed + " " + key).containsAnyOf("decided on", "kept by you");
            }
        }
    }

    private Optional<Remembered> newestDecision(String key) {
        return decided.descendingMap().values().stream()
                .filter(rows -> rows.containsKey(key))
                .findFirst()
                .map(rows -> rows.get(key));
    }

    private String key(ProposedChange change) {
        return review.ledger().repairTypes().name(change.repairType());
    }

    private PriceBooks books() {
        return AdoptDecisions.books(shop, Settings.DEFAULTS, today);
    }

    /** Decides some rows for some day; now and then one that was decided on this draft already, which is refused. */
    void adopt() throws IOException {
        boolean past = random.nextInt(12) == 0;
        LocalDate effective = past ? today.minusDays(random.nextInt(3)) : day();
        PriceBooks books = books();
        List<Decision> decisions = decisions(books.newest(), effective);
        if (decisions.isEmpty()) {
            return;
        }
        Adoption adoption = new Adoption(
                effective,
                today,
                "owner",
                past ? Optional.of("used already") : Optional.empty(),
                Adoption.LaterBook.OVERRIDES);
        boolean again = decisions.stream().anyMatch(row -> onThisDraft.containsKey(row.repairType()));
        boolean taken = past
                && books.versions().stream()
                        .anyMatch(book ->
                                book.effective() >= adoption.day() && book.effective() <= (int) today.toEpochDay());
        if (again || taken) {
            assertThatThrownBy(() -> adopt(decisions, adoption))
                    .as(seed)
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining(taken ? "in force already" : "decided on this draft before");
            return;
        }
        PriceBook before = books.inForce(adoption.day());
        asksWhereALaterBookOverrides(decisions, adoption);
        adopt(decisions, adoption);
        adopted++;
        Map<String, Remembered> rows = decided.computeIfAbsent(adoption.day(), day -> new HashMap<>());
        for (Decision row : decisions) {
            RepairType was = before.type(row.repairType()).orElseThrow();
            boolean keeps = row.choice() == Decision.Choice.KEEP;
            rows.put(
                    row.repairType(),
                    keeps
                            ? new Remembered(was.bookSeconds(), was.bookLabour(), row.until())
                            : new Remembered(row.seconds(), row.labour(), Absent.DAY));
            onThisDraft.put(row.repairType(), adoption.day());
        }
    }

    private void asksWhereALaterBookOverrides(List<Decision> decisions, Adoption adoption) throws IOException {
        boolean overridden = decisions.stream()
                .filter(row -> row.choice() != Decision.Choice.KEEP)
                .anyMatch(row -> decided.tailMap(adoption.day(), false).values().stream()
                        .filter(rows -> rows.containsKey(row.repairType()))
                        .findFirst()
                        .filter(rows -> rows.get(row.repairType()).seconds() != row.seconds())
                        .isPresent());
        if (overridden) {
            Adoption asking =
                    new Adoption(adoption.effective(), today, "owner", adoption.usedAlready(), Adoption.LaterBook.ASK);
            assertThatThrownBy(() -> adopt(decisions, asking))
                    .as(seed)
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("--confirm");
        }
    }

    private void adopt(List<Decision> decisions, Adoption adoption) {
        new AdoptDecisions()
                .adopt(
                        shop,
                        Settings.DEFAULTS,
                        new DecidedDraft(draft, "decided.xlsx", decisions, List.of(), List.<CellFault>of()),
                        adoption);
    }

    private LocalDate day() {
        List<Integer> coming =
                new ArrayList<>(decided.tailMap((int) today.toEpochDay(), false).keySet());
        coming.addAll(withdrawn.tailSet((int) today.toEpochDay(), false));
        return !coming.isEmpty() && random.nextInt(3) == 0
                ? LocalDate.ofEpochDay(coming.get(random.nextInt(coming.size())))
                : today.plusDays(1 + random.nextInt(200));
    }

    private List<Decision> decisions(PriceBook newest, LocalDate effective) {
        boolean again = random.nextInt(10) == 0;
        List<Decision> decisions = new ArrayList<>();
        for (ProposedChange change : review.revision().changes()) {
            RepairType now = newest.type(key(change)).orElseThrow();
            boolean stale = now.bookSeconds() != change.bookSeconds() || now.bookLabour() != change.bookLabour();
            boolean mayBe = onThisDraft.containsKey(key(change)) ? again && !stale : !stale;
            if (mayBe && random.nextInt(3) == 0) {
                decisions.add(decision(change, effective));
            }
        }
        return decisions;
    }

    private Decision decision(ProposedChange change, LocalDate effective) {
        Decision.Choice choice = Decision.Choice.values()[1 + random.nextInt(3)];
        long own = 900L * (1 + random.nextInt(80));
        long seconds = switch (choice) {
            case TAKE -> change.proposedSeconds();
            case OWN -> own;
            default -> change.bookSeconds();
        };
        long labour = switch (choice) {
            case TAKE -> change.proposedLabour();
            case OWN -> own / 36 * HUNDRED / 100;
            default -> change.bookLabour();
        };
        int until =
                choice == Decision.Choice.KEEP ? (int) effective.toEpochDay() + 1 + random.nextInt(300) : Absent.DAY;
        return new Decision(
                key(change),
                key(change),
                choice,
                change.bookSeconds(),
                change.bookLabour(),
                seconds,
                labour,
                choice == Decision.Choice.KEEP ? "so" : "",
                until,
                new Decision.Cell("Decide", "J" + (13 + change.repairType())));
    }

    private void withdraw() {
        List<Integer> all = new ArrayList<>(decided.keySet());
        if (all.isEmpty()) {
            return;
        }
        LocalDate effective = LocalDate.ofEpochDay(all.get(random.nextInt(all.size())));
        Withdraw.Request request = new Withdraw.Request(effective, today, "owner", "changed my mind");
        if (!effective.isAfter(today)) {
            assertThatThrownBy(() -> new Withdraw().withdraw(shop, Settings.DEFAULTS, request))
                    .as(seed)
                    .hasMessageContaining("in force already");
            return;
        }
        assertThat(new Withdraw().withdraw(shop, Settings.DEFAULTS, request)).exists();
        decided.remove((int) effective.toEpochDay());
        withdrawn.add((int) effective.toEpochDay());
        onThisDraft.values().removeIf(day -> day == (int) effective.toEpochDay());
    }

    Path newestBook() {
        return new BookFiles(shop).book(LocalDate.ofEpochDay(books().newest().effective()));
    }

    /** Every book is what the decisions make of the first, by memory and by the records; what was in force never changed. */
    void holds() throws IOException {
        List<PriceBook> versions = books().versions();
        DecisionFiles files = DecisionFiles.of(shop);
        Map<String, RepairType> byMemory = new TreeMap<>(versions.get(0).types());
        Map<String, RepairType> byRecords = new TreeMap<>(byMemory);
        for (PriceBook version : versions) {
            decided.getOrDefault(version.effective(), Map.of())
                    .forEach((key, row) ->
                            byMemory.computeIfPresent(key, (k, type) -> type.at(row.seconds(), row.labour())));
            for (Sitting sitting : files.standing(version.effective())) {
                for (Sitting.Row row : sitting.rows()) {
                    byRecords.computeIfPresent(row.repairType(), (key, type) -> type.at(row.seconds(), row.labour()));
                }
            }
            String day = seed + ", " + today + ", book of " + LocalDate.ofEpochDay(version.effective());
            assertThat(version.types()).as(day).isEqualTo(byMemory);
            assertThat(version.types()).as(day).isEqualTo(byRecords);
            Path file = new BookFiles(shop).book(LocalDate.ofEpochDay(version.effective()));
            if (version.effective() <= (int) today.toEpochDay()) {
                byte[] bytes = Files.readAllBytes(file);
                assertThat(inForce.computeIfAbsent(file, first -> bytes))
                        .as(day)
                        .isEqualTo(bytes);
            }
        }
        assertThat(versions).as(seed).hasSize(1 + decided.size());
    }
}
