package benchtrue.revision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.ShopSettings;
import benchtrue.findings.Verdict;
import benchtrue.revision.ProposeRevision.Price;
import benchtrue.settings.FamilyPolicy;
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.PriceBook;
import benchtrue.shop.Refusal;
import benchtrue.shop.RepairType;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tries to make the program cut hazardous work or the shortest safe hours: any book, policy, method and decision. */
class SafeHoursTest {
    private static final List<String> FAMILIES = List.of("setup", "fretwork", "structural", "finish", "electronics");
    private static final int ROUNDS = 5_000;
    private static final int EFFECTIVE = 20_500;

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void hazardousWorkAndShortestSafeHoursAreNeverCut(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < ROUNDS; round++) {
            RepairType type = type(random);
            Settings settings = settings(random);
            double factor = random.nextInt(20) == 0 ? Double.NaN : 0.05 + 3 * random.nextDouble() * random.nextDouble();
            Verdict verdict = Verdict.values()[random.nextInt(Verdict.values().length)];
            String at = "seed " + seed + " round " + round + " " + type + " factor " + factor + " " + settings.policy();
            GuardRails railed = random.nextInt(6) == 0
                    ? GuardRails.kept(type, new Kept("job", EFFECTIVE + 1, "so"), settings)
                    : GuardRails.of(type, verdict, factor, settings);
            long price = Price.of(type, railed.seconds(), 100 * Money.UNIT, settings.policy());
            expectSafe(type, railed, price, at);
            decide(random, type, railed.seconds(), price, at);
        }
    }

    private static RepairType type(SplittableRandom random) {
        long book = random.nextInt(50) == 0 ? 0 : 36L * (1 + random.nextInt(1_500));
        long least = random.nextInt(3) == 0 ? Absent.AMOUNT : book * random.nextInt(20, 140) / 100;
        String family = FAMILIES.get(random.nextInt(FAMILIES.size()));
        List<String> hazards = random.nextInt(3) == 0 ? List.of("solvent") : List.of();
        long leastLabour = random.nextBoolean() ? Absent.AMOUNT : Money.UNIT * random.nextInt(150);
        return new RepairType(
                "job", "Job", family, book, 100 * Money.UNIT * book / Hours.SECONDS, least, hazards, leastLabour, 0);
    }

    private static FamilyPolicy family(SplittableRandom random) {
        return new FamilyPolicy(
                FAMILIES.get(random.nextInt(FAMILIES.size())),
                Optional.of(Policy.Rule.values()[random.nextInt(3)]),
                OptionalDouble.of(0.3 + 0.6 * random.nextDouble()),
                random.nextBoolean() ? Absent.AMOUNT : 1 + random.nextInt(200) * Money.UNIT,
                random.nextBoolean() ? Absent.AMOUNT : Money.UNIT * (1 + random.nextInt(50)),
                1);
    }

    private static Settings settings(SplittableRandom random) {
        Policy policy = new Policy(
                Policy.Rule.values()[random.nextInt(3)],
                0.3 + 0.6 * random.nextDouble(),
                0.01 + 0.99 * random.nextDouble(),
                Money.UNIT * (1 + random.nextInt(20)),
                Policy.FallBack.NEVER,
                random.nextBoolean() ? List.of() : List.of(family(random)));
        return new ShopSettings()
                .policy(policy)
                .tolerance(random.nextInt(20) / 100.0)
                .build();
    }

    /** Hours that stay are never a cut, even where a book stands below its own shortest safe hours. */
    private static void expectSafe(RepairType type, GuardRails railed, long price, String at) {
        long today = type.bookSeconds();
        boolean structural = List.of("structural", "finish").contains(type.family());
        boolean neverShorter = !type.hazards().isEmpty() || structural && !Absent.has(type.leastSeconds());
        if (neverShorter) {
            assertThat(railed.seconds()).as(at).isGreaterThanOrEqualTo(today);
        }
        if (Absent.has(type.leastSeconds()) && railed.seconds() != today) {
            assertThat(railed.seconds()).as(at).isGreaterThanOrEqualTo(type.leastSeconds());
        }
        if (Absent.has(type.leastSeconds()) && today < type.leastSeconds() && railed.seconds() == today) {
            assertThat(railed.reasons().toString()).as(at).contains("check this entry");
        }
        if (railed.seconds() != today) {
            assertThat(price).as(at).isGreaterThanOrEqualTo(Absent.firstOf(type.leastLabour(), 0));
        }
    }

    /** Whatever the owner decides, the next book's hours are today's, or not below the shortest safe ones. */
    private static void decide(SplittableRandom random, RepairType type, long proposed, long price, String at) {
        Decision.Choice choice = Decision.Choice.values()[1 + random.nextInt(3)];
        long seconds = switch (choice) {
            case TAKE -> proposed;
            case OWN -> 36L * random.nextInt(1_500);
            default -> type.bookSeconds();
        };
        Decision decision = new Decision(
                "job",
                "Job",
                choice,
                type.bookSeconds(),
                type.bookLabour(),
                seconds,
                seconds == proposed ? price : 100 * Money.UNIT,
                "so",
                EFFECTIVE + 90,
                new Decision.Cell("Decide", "M13"));
        PriceBook today = new PriceBook(20_000, Map.of("job", type));
        DecidedDraft draft = new DecidedDraft("digest", "decided.xlsx", List.of(decision), List.of(), List.of());
        NextBook next = new NextBook(today, today, new TreeMap<>(), Settings.DEFAULTS.figures());
        boolean unsafe = choice != Decision.Choice.KEEP
                && (Absent.has(type.leastSeconds()) && seconds < type.leastSeconds()
                        || seconds <= 0
                        || decision.labour() < Absent.firstOf(type.leastLabour(), 0));
        if (unsafe) {
            assertThatThrownBy(() -> next.decide(draft, EFFECTIVE))
                    .as(at + " " + decision)
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("M13");
            return;
        }
        RepairType decided = next.decide(draft, EFFECTIVE).type("job").orElseThrow();
        assertThat(decided.bookSeconds()).as(at + " " + decision).isEqualTo(seconds);
        assertThat(decided.hazards()).isEqualTo(type.hazards());
        assertThat(decided.leastSeconds()).isEqualTo(type.leastSeconds());
    }
}
