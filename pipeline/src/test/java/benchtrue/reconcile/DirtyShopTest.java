package benchtrue.reconcile;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopFolder;
import benchtrue.intake.columns.InputFile;
import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import benchtrue.shop.TimeEntries;
import benchtrue.tables.WriteSetAside;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DirtyShopTest {
    @TempDir
    Path folder;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 30);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyRowAndEverySecondOfAnUntidyShopIsAccountedFor(long seed) {
        DirtyShop dirty = new DirtyShop(folder, seed);
        Reconciled result = dirty.shop().reconciled();
        assertThat(result.balances()).as("seed %d", seed).allMatch(Balance::holds);
        Balance hours = result.balances().stream()
                .filter(balance -> balance.name().equals("hours"))
                .findFirst()
                .orElseThrow();
        long written = dirty.secondsWritten()
                .add(new BigDecimal("0.5"))
                .setScale(0, RoundingMode.FLOOR)
                .longValueExact();
        assertThat(hours.read()).as("seed %d", seed).isEqualTo(written);
        assertThat(hours.terms())
                .filteredOn(term -> term.name().equals(Balance.IN_LEDGER))
                .allMatch(term -> term.amount() > 0);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theLedgerOfAnUntidyShopIsTidy(long seed) {
        Ledger ledger = new DirtyShop(folder, seed).shop().reconciled().ledger();
        TimeEntries time = ledger.time();
        int before = TimeEntries.SHARED;
        for (int entry = 0; entry < time.size(); entry++) {
            assertThat(time.ticket(entry)).isBetween(before, ledger.tickets().size() - 1);
            assertThat(time.line(entry)).isBetween(-1, ledger.lines().size() - 1);
            assertThat(time.repairType(entry))
                    .isBetween(-1, ledger.repairTypes().size() - 1);
            assertThat(time.technician(entry)).isBetween(0, ledger.technicians().size() - 1);
            assertThat(time.workDay(entry)).isLessThanOrEqualTo(ledger.asOf());
            assertThat(time.seconds(entry)).isBetween(0L, 86_400L);
            before = time.ticket(entry);
        }
        assertThat(ledger.overheads()).allMatch(row -> row.month() > 0 && Absent.has(row.amount()));
        assertThat(ledger.paidHours()).allMatch(row -> row.month() > 0 && row.seconds() >= 0);
        assertThat(ledger.wages()).allMatch(row -> Absent.has(row.effectiveFrom()) && row.hourlyWage() >= 0);
        assertThat(ledger.waits()).allMatch(row -> Absent.has(row.from()) && row.ticket() >= 0);
        for (int use = 0; use < ledger.partUses().size(); use++) {
            assertThat(ledger.partUses().get(use).cost()).isNotEqualTo(Absent.AMOUNT);
            assertThat(Absent.has(ledger.partUses().usedOn(use))).isTrue();
        }
        for (int ticket = 0; ticket < ledger.tickets().size(); ticket++) {
            assertThat(ledger.tickets().opened(ticket)).isBetween(-30_000, ledger.asOf());
        }
        Set<String> keys = new HashSet<>();
        for (int line = 0; line < ledger.lines().size(); line++) {
            assertThat(keys.add(
                            ledger.lines().ticket(line) + " " + ledger.lines().line(line)))
                    .isTrue();
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void nothingAboutCustomersLeavesTheParser(long seed) throws IOException {
        Reconciled result = new DirtyShop(folder, seed).shop().reconciled();
        Path aside = folder.resolve("set-aside");
        new WriteSetAside().write(result.setAside(), aside);
        try (Stream<Path> files = Files.list(aside)) {
            for (Path file : files.toList()) {
                assertThat(Files.readString(file)).doesNotContain("Quist", "555 0100", "Elm Row", "a note");
            }
        }
        assertThat(result.notices().toString() + result.balances()).doesNotContain("Quist", "555 0100", "Elm Row");
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void setAsideFilesCarryEveryRowThatIsSetAside(long seed) throws IOException {
        Reconciled result = new DirtyShop(folder, seed).shop().reconciled();
        long expected = result.balances().stream()
                .filter(balance -> balance.unit().equals("rows"))
                .flatMap(balance -> balance.terms().stream())
                .filter(term -> term.name().equals("set aside"))
                .mapToLong(Balance.Term::amount)
                .sum();
        assertThat(ShopFolder.setAside(result))
                .hasSize((int) expected)
                .allSatisfy(row -> assertThat(row.reasons()).isNotEmpty());
        assertThat(result.files()).extracting(InputFile::name).doesNotHaveDuplicates();
    }
}
