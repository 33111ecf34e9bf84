package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.findings.FindVerdicts;
import benchtrue.findings.Findings;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.Verdict;
import benchtrue.hours.SplitHours;
import benchtrue.intake.ReadExports;
import benchtrue.reconcile.Reconcile;
import benchtrue.revision.AlreadyDecided;
import benchtrue.revision.ProposeRevision;
import benchtrue.revision.ProposedChange;
import benchtrue.revision.Revision;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.Tidiness;
import benchtrue.sample.WriteSample;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever share of whichever rows can't be read, nothing is called wrongly quoted, or changed, that would not be otherwise. */
class UnreadHoursTest {
    private static final int AS_OF = (int) LocalDate.of(2026, 10, 31).toEpochDay();
    private static final int TICKET = 1;
    private static final int LINE = 2;
    private static final int TECHNICIAN = 4;
    private static final int DAY = 5;
    private static final int HOURS = 6;
    private static final double[] SHARES = {0.01, 0.05, 0.1, 0.2, 0.5, 1};

    @TempDir
    Path folder;

    /** Which rows of a file become unreadable, and how. */
    private enum Damage {
        LONG_ENTRIES,
        SHORT_ENTRIES,
        ONE_TECHNICIAN,
        ONE_MONTH,
        ONE_REPAIR,
        ANY_ENTRIES,
        ABOVE_A_DAY,
        QUOTED_LINES,
        TICKETS
    }

    private record Night(Findings findings, Revision revision) {}

    private record Tally(int repairs, int wronglyCalled, int wronglyChanged, int held, int refused) {
        Tally plus(Tally other) {
            return new Tally(
                    repairs + other.repairs,
                    wronglyCalled + other.wronglyCalled,
                    wronglyChanged + other.wronglyChanged,
                    held + other.held,
                    refused + other.refused);
        }
    }

    @Test
    void nothingFirmIsSaidThatTheUnreadRowsCouldUndo() throws IOException {
        hold(1, 1, 600, new double[] {0.05, 0.2, 1});
    }

    @Test
    @Tag("proof")
    void nothingFirmIsSaidThatTheUnreadRowsCouldUndoInEightShops() throws IOException {
        hold(101, 8, 1_200, SHARES);
    }

    private void hold(long firstSeed, int seeds, int tickets, double[] shares) throws IOException {
        Map<String, Tally> tallies = new LinkedHashMap<>();
        for (long seed = firstSeed; seed < firstSeed + seeds; seed++) {
            for (Damage damage : Damage.values()) {
                for (double share : shares) {
                    tallies.merge(damage + ", " + share, compare(seed, tickets, damage, share), Tally::plus);
                }
            }
        }
        Tally all = tallies.values().stream().reduce(new Tally(0, 0, 0, 0, 0), Tally::plus);
        StringBuilder table =
                new StringBuilder("damage, share: repairs, wrongly called, wrongly changed, held, refused\n");
        tallies.forEach(
                (what, tally) -> table.append(what).append(": ").append(tally).append('\n'));
        table.append("all: ").append(all);
        System.getLogger("benchtrue").log(System.Logger.Level.INFO, table.toString());
        assertThat(all.wronglyCalled()).as(table.toString()).isLessThanOrEqualTo(all.repairs() / 50);
        assertThat(all.wronglyChanged()).as(table.toString()).isLessThanOrEqualTo(all.repairs() / 50);
    }

    private Tally compare(long seed, int tickets, Damage damage, double share) throws IOException {
        Path shop = folder.resolve("shop-" + seed + "-" + tickets);
        if (Files.notExists(shop)) {
            WriteSample.write(SampleOptions.standard(shop)
                    .withSeed(seed)
                    .withTickets(tickets)
                    .with(Tidiness.TIDY));
            // Which simpler method did better on past jobs is a matter of its own: a flip there changes every row.
            Files.writeString(
                    shop.resolve("shop.toml"),
                    Files.readString(shop.resolve("shop.toml")) + "\n[policy]\nfall_back = \"never\"\n");
            whole = night(shop);
        }
        Path file = shop.resolve("exports").resolve(file(damage));
        String before = Files.readString(file, StandardCharsets.UTF_8);
        try {
            Files.writeString(file, damaged(before, damage, share, new Random(seed * 31 + damage.ordinal())));
            return tally(whole, night(shop));
        } catch (Refusal nothingPublished) {
            return new Tally(0, 0, 0, 0, 1);
        } finally {
            Files.writeString(file, before);
        }
    }

    private Night whole;

    private static Tally tally(Night whole, Night damaged) {
        Map<Integer, Verdict> verdicts = whole.findings().repairs().stream()
                .collect(Collectors.toMap(RepairFinding::repairType, RepairFinding::verdict));
        int called = 0;
        int held = 0;
        for (RepairFinding finding : damaged.findings().repairs()) {
            boolean firm = finding.verdict() == Verdict.UNDER_QUOTED || finding.verdict() == Verdict.OVER_QUOTED;
            called += firm && verdicts.get(finding.repairType()) != finding.verdict() ? 1 : 0;
            held += finding.verdict() == Verdict.NOT_JUDGED ? 1 : 0;
        }
        Map<Integer, ProposedChange> changes = whole.revision().changes().stream()
                .collect(Collectors.toMap(ProposedChange::repairType, Function.identity()));
        int changed = 0;
        for (ProposedChange change : damaged.revision().changes()) {
            changed +=
                    direction(change) != 0 && direction(changes.get(change.repairType())) != direction(change) ? 1 : 0;
        }
        return new Tally(damaged.findings().repairs().size(), called, changed, held, 0);
    }

    private static int direction(ProposedChange change) {
        return Long.compare(change.proposedSeconds(), change.bookSeconds());
    }

    private static Night night(Path shop) {
        Settings settings = new ReadSettings().read(shop);
        CostedLines costs = new CostLines()
                .cost(
                        new SplitHours()
                                .split(
                                        new Reconcile()
                                                .reconcile(new ReadExports().read(shop, settings), settings, AS_OF)
                                                .ledger(),
                                        settings),
                        settings);
        Findings findings = new FindVerdicts().find(costs, settings);
        return new Night(findings, new ProposeRevision().propose(costs, findings, settings, AlreadyDecided.NOTHING));
    }

    private static String file(Damage damage) {
        return switch (damage) {
            case QUOTED_LINES -> "quoted-lines.csv";
            case TICKETS -> "tickets.csv";
            default -> "time-log.csv";
        };
    }

    private static String damaged(String text, Damage damage, double share, Random random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        List<Integer> chosen = chosen(lines, damage, share, random);
        for (int row : chosen) {
            String[] cells = lines.get(row).split(",", -1);
            switch (damage) {
                case QUOTED_LINES -> cells[3] = "some";
                case TICKETS -> cells[1] = "soon";
                case ABOVE_A_DAY -> cells[HOURS] = "40";
                default -> cells[HOURS] = "lots";
            }
            lines.set(row, String.join(",", cells));
        }
        return String.join("\r\n", lines) + "\r\n";
    }

    private static List<Integer> chosen(List<String> lines, Damage damage, double share, Random random) {
        String[] first = lines.get(1 + random.nextInt(lines.size() - 1)).split(",", -1);
        List<Integer> rows = IntStream.range(1, lines.size())
                .boxed()
                .filter(row -> {
                    String[] cells = lines.get(row).split(",", -1);
                    return switch (damage) {
                        case ONE_TECHNICIAN -> cells[TECHNICIAN].equals(first[TECHNICIAN]);
                        case ONE_MONTH -> cells[DAY].startsWith(first[DAY].substring(0, 7));
                        case ONE_REPAIR -> cells[LINE].equals("1") && cells[TICKET].endsWith("7");
                        default -> true;
                    };
                })
                .collect(Collectors.toCollection(ArrayList::new));
        if (damage == Damage.LONG_ENTRIES || damage == Damage.SHORT_ENTRIES) {
            Comparator<Integer> shorter = Comparator.comparingDouble(
                    row -> Double.parseDouble("0" + lines.get(row).split(",", -1)[HOURS]));
            rows.sort(damage == Damage.SHORT_ENTRIES ? shorter : shorter.reversed());
        } else {
            java.util.Collections.shuffle(rows, random);
        }
        return rows.subList(0, (int) Math.round(share * rows.size()));
    }
}
