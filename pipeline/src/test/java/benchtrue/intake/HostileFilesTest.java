package benchtrue.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import benchtrue.ShopFolder;
import benchtrue.intake.columns.InputFile;
import benchtrue.intake.columns.Table;
import benchtrue.intake.files.DigestedFile;
import benchtrue.reconcile.Reconciled;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import benchtrue.shop.TimeEntries;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that would do harm, or are not what their name says, end the run with a word about the file. */
class HostileFilesTest {
    private static final String HEADER = "ticket,from,reason";

    @TempDir
    Path folder;

    private void refused(ShopFolder shop, ExitCode code, String... words) {
        assertThatThrownBy(shop::reconciled)
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.exitCode()).isEqualTo(code))
                .hasMessageContainingAll(words);
    }

    private ShopFolder waits(byte[] bytes) {
        return new ShopFolder(folder).bytes("exports/waits.csv", bytes);
    }

    @Test
    void aLineOfTwoThousandMillionBytesIsRefusedAfterTheFirstMillion() throws IOException {
        ShopFolder shop = waits((HEADER + "\n").getBytes(StandardCharsets.UTF_8));
        try (RandomAccessFile file =
                new RandomAccessFile(folder.resolve("exports/waits.csv").toFile(), "rw")) {
            file.setLength(Integer.MAX_VALUE);
        }
        refused(shop, ExitCode.UNUSABLE_FILE, "exports/waits.csv, line 2", "a row longer than 1048576 letters");
    }

    @Test
    void tenThousandColumnsAreRefused() {
        refused(
                waits((HEADER + ",c".repeat(10_000)).getBytes(StandardCharsets.UTF_8)),
                ExitCode.UNUSABLE_FILE,
                "exports/waits.csv, line 1",
                "more than 1000 cells");
    }

    @Test
    void aQuoteThatSwallowsTheRestOfALargeFileIsRefused() {
        refused(
                waits((HEADER + "\n\"T1,2026-01-01,parts\n" + "T1,2026-01-01,parts\n".repeat(100_000))
                        .getBytes(StandardCharsets.UTF_8)),
                ExitCode.UNUSABLE_FILE,
                "exports/waits.csv, line 2");
    }

    @Test
    void aZipBombUnderATablesNameIsNotUnpacked() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
            zip.write(new byte[10_000_000]);
        }
        refused(waits(bytes.toByteArray()), ExitCode.UNUSABLE_FILE, "exports/waits.csv", "a zip archive or a workbook");
    }

    @Test
    void xmlWithNestedEntitiesIsNotExpanded() {
        refused(
                waits("<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;\">]><x>&b;</x>"
                        .getBytes(StandardCharsets.UTF_8)),
                ExitCode.UNUSABLE_FILE,
                "exports/waits.csv",
                "a web page or XML");
    }

    static List<Arguments> kinds() {
        return List.of(
                Arguments.of("%PDF-1.7", "a PDF"),
                Arguments.of("{\"waits\": []}", "JSON"),
                Arguments.of("\u0089PNG\r\n", "a picture"),
                Arguments.of("\u00d0\u00cf\u0011\u00e0", "a workbook of the old kind, or one with a password"),
                Arguments.of("\u001f\u008b\b\0", "a compressed file"));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void aFileOfAnotherKindIsCalledWhatItIs(String start, String kind) {
        refused(waits(start.getBytes(StandardCharsets.ISO_8859_1)), ExitCode.UNUSABLE_FILE, "exports/waits.csv", kind);
    }

    @Test
    void rowsWithoutAHeaderAreRefusedWithoutRepeatingThem() {
        assertThatThrownBy(waits("T1,2026-01-01,parts,Orla Quist\n".getBytes(StandardCharsets.UTF_8))::reconciled)
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("expected also ticket, from, reason")
                .hasMessageNotContaining("Quist");
    }

    @Test
    void aRowWithAZeroByteIsSetAside() {
        assertThat(ShopFolder.setAside(waits((HEADER + "\nT1,2026-01-01\0,parts\n").getBytes(StandardCharsets.UTF_8))
                        .reconciled()))
                .singleElement()
                .satisfies(row -> assertThat(row.reasons().get(0)).contains("without control characters"));
    }

    @Test
    void aTextOfTwoThousandLettersIsSetAsideAndStaysSetAsideWhenItComesBack() {
        ShopFolder shop =
                waits((HEADER + "\n" + "T".repeat(2_000) + ",2026-01-01,parts\n").getBytes(StandardCharsets.UTF_8));
        assertThat(ShopFolder.setAside(shop.reconciled())).singleElement().satisfies(row -> {
            assertThat(row.reasons().get(0)).contains("at most 1000 bytes long");
            assertThat(row.texts().get(0).length()).isGreaterThan(1_000);
        });
    }

    @Test
    void aFolderUnderATablesNameIsRefused() throws IOException {
        ShopFolder shop = new ShopFolder(folder);
        Files.createDirectories(folder.resolve("exports/waits.csv"));
        refused(shop, ExitCode.UNUSABLE_FILE, "exports/waits.csv", "no file");
    }

    @Test
    void aLinkThatLeadsNowhereIsRefused() throws IOException {
        ShopFolder shop = new ShopFolder(folder);
        Files.createSymbolicLink(folder.resolve("exports/waits.csv"), folder.resolve("gone.csv"));
        refused(shop, ExitCode.UNUSABLE_FILE, "exports/waits.csv", "leads nowhere");
    }

    @Test
    void aFileThatGrowsWhileItIsReadIsNotTakenHalf() throws IOException {
        Path file = Files.writeString(folder.resolve("waits.csv"), HEADER + "\n");
        try (DigestedFile bytes = new DigestedFile(file, "exports/waits.csv")) {
            assertThat(bytes.read(new byte[4], 0, 4)).isEqualTo(4);
            Files.writeString(file, "T1,2026-01-01,parts\n", StandardOpenOption.APPEND);
            assertThatThrownBy(bytes::finish)
                    .isInstanceOfSatisfying(
                            Refusal.class,
                            refusal -> assertThat(refusal.exitCode()).isEqualTo(ExitCode.READ_FAILED))
                    .hasMessageContaining("exports/waits.csv")
                    .hasMessageContaining("changed while it was read");
        }
    }

    /** What a shop's system does that appends to its export while the night reads: each row is whole, more come. */
    @Test
    void anExportThatGrowsAllNightIsRefusedOrReadAsItWasAtOneMoment() throws Exception {
        ShopFolder shop = new ShopFolder(folder);
        Path log = folder.resolve("exports/time-log.csv");
        Set<Long> moments = ConcurrentHashMap.newKeySet();
        long before = seconds(shop);
        moments.add(before);
        AtomicBoolean ended = new AtomicBoolean();
        Thread system = new Thread(() -> {
            for (int hour = 1; !ended.get() && hour < 2_000; hour++) {
                moments.add(before + 3_600L * hour);
                append(log, "G" + hour + ",T1,1,Ada,2026-03-04,1\r\n");
            }
        });
        system.start();
        try {
            for (int night = 0; night < 60; night++) {
                try {
                    assertThat(moments).contains(seconds(shop));
                } catch (Refusal refusal) {
                    assertThat(refusal.exitCode()).isEqualTo(ExitCode.READ_FAILED);
                    assertThat(refusal).hasMessageContaining("exports/time-log.csv");
                }
            }
        } finally {
            ended.set(true);
            system.join();
        }
        assertThat(seconds(shop)).isEqualTo(Collections.max(moments));
    }

    /** Two rules fit one file: it is read for each, perhaps while another takes its place. */
    @Test
    void aFileOfTwoTablesThatChangesBetweenThemIsRefused() {
        List<InputFile> files = new ShopFolder(folder)
                        .file(
                                "shop.toml",
                                "[[files]]",
                                "name = \"both.csv\"",
                                "table = \"tickets\"",
                                "[[files]]",
                                "name = \"both.csv\"",
                                "table = \"waits\"")
                        .file(
                                "exports/both.csv",
                                "ticket,opened,instrument_class,from,reason",
                                "T2,2026-03-02,banjo,2026-03-03,parts")
                        .exports()
                        .files()
                        .stream()
                        .filter(file -> file.file().equals("exports/both.csv"))
                        .toList();
        assertThat(files).extracting(InputFile::table).containsExactlyInAnyOrder(Table.TICKETS, Table.WAITS);
        InputFile first = files.get(0);
        InputFile other = new InputFile(
                first.name(),
                first.table(),
                "0",
                first.bytes(),
                0,
                1,
                first.day(),
                List.of(),
                first.file(),
                first.keys());
        assertThatThrownBy(() -> ReadExports.expectOneContent(List.of(files.get(1), other)))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.exitCode()).isEqualTo(ExitCode.READ_FAILED))
                .hasMessageContainingAll("exports/both.csv", "changed while it was read");
    }

    private static void append(Path file, String row) {
        try {
            Files.writeString(file, row, StandardOpenOption.APPEND);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static long seconds(ShopFolder shop) {
        TimeEntries time = shop.reconciled().ledger().time();
        return IntStream.range(0, time.size()).mapToLong(time::seconds).sum();
    }

    @ParameterizedTest
    @ValueSource(strings = {"\u3000", "\u2003", "\u1680", "\u2028", "\u00a0", "\u202f \u2007"})
    void aCellOfUnusualWhiteSpaceIsAnEmptyOne(String space) {
        ShopFolder shop = new ShopFolder(folder)
                .file(
                        "exports/time-log.csv",
                        "entry,ticket,line,technician,work_date,hours,start,end",
                        "E1,T1,1,Ada,2026-03-03," + space + ",9:00,10:00",
                        "E2,T1,1,Ada,2026-03-04,2," + space + "," + space,
                        "E3,T1,1,Ada,2026-03-05," + space + "," + space + ",10:00",
                        "E4," + space + ",,Ada,2026-03-06,1,,");
        Reconciled read = shop.reconciled();
        assertThat(read.ledger().time().size()).isEqualTo(3);
        assertThat(ShopFolder.setAside(read)).hasSize(1);
        assertThat(read.ledger().time().seconds(0)
                        + read.ledger().time().seconds(1)
                        + read.ledger().time().seconds(2))
                .isEqualTo(4 * 3_600);
    }

    @Test
    void aNamedPipeAsSettingsOrAmongTheExportsIsNeverOpened() throws IOException, InterruptedException {
        assumeTrue(
                new ProcessBuilder("mkfifo", folder.resolve("pipe").toString())
                                .start()
                                .waitFor()
                        == 0,
                "mkfifo");
        ShopFolder shop = new ShopFolder(folder);
        Files.move(folder.resolve("pipe"), folder.resolve("shop.toml"));
        refused(shop, ExitCode.SETTINGS, "shop.toml: found something that is no file");
        Files.move(folder.resolve("shop.toml"), folder.resolve("exports/waits.csv"));
        refused(shop, ExitCode.UNUSABLE_FILE, "exports/waits.csv: found something that is no file");
    }
}
