package benchtrue.workbook.draft;

import benchtrue.BanjoShop;
import benchtrue.MutatedBytes;
import benchtrue.MutatedSheet;
import benchtrue.UnderQuotedShop;
import benchtrue.nightly.AdoptDecisions;
import benchtrue.nightly.Adoption;
import benchtrue.nightly.Night;
import benchtrue.nightly.Progress;
import benchtrue.settings.Settings;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Damages a workbook that an owner decided in and adopts it: the book must be the one that was decided, or the workbook is
 * refused by name and nothing is written. The number of a damage tells it.
 */
final class DamagedDecisions {
    private static final LocalDate DECIDED = LocalDate.of(2026, 7, 1);
    private static final LocalDate EFFECTIVE = LocalDate.of(2026, 8, 1);
    private static final double KEPT_UNTIL = 46_568; // 30 June 2027, as spreadsheets count days

    private final Path shop;
    private final Path workbook;
    private final byte[] whole;
    private final Map<String, String> before;
    private final Map<String, String> decided;
    private int refused;

    private DamagedDecisions(Path folder, Path shop, Decisions decisions) throws IOException {
        this.shop = shop;
        Path night = new Night(List.of(new WriteRevisionWorkbook()), Progress.UNHEARD, Clock.systemUTC(), "test")
                .run(shop, Settings.DEFAULTS, (int) DECIDED.toEpochDay())
                .folder();
        workbook = folder.resolve("decided.xlsx");
        decide(night.resolve(WriteRevisionWorkbook.FILE), decisions);
        whole = Files.readAllBytes(workbook);
        before = written();
        adopt();
        decided = written();
        putBack();
        if (decided.equals(before)) {
            throw new IllegalStateException("nothing was adopted");
        }
    }

    /** What an owner types into a draft. */
    private interface Decisions {
        void type(XSSFWorkbook draft);
    }

    /** One repair is taken, one has hours of its own, one is kept. */
    static DamagedDecisions onRepairs(Path folder) throws IOException {
        return new DamagedDecisions(folder, UnderQuotedShop.write(folder.resolve("shop"), 1.3), draft -> {
            Sheet sheet = draft.getSheet(DecideSheet.NAME);
            set(sheet, "job-0", DecideColumn.DECISION, "take");
            set(sheet, "job-1", DecideColumn.DECISION, "own");
            row(sheet, "job-1").getCell(DecideColumn.OWN_HOURS.ordinal()).setCellValue(5.25);
            set(sheet, "job-2", DecideColumn.DECISION, "keep");
            set(sheet, "job-2", DecideColumn.REASON, "a new press");
            row(sheet, "job-2").getCell(DecideColumn.UNTIL.ordinal()).setCellValue(KEPT_UNTIL);
        });
    }

    /** The line for banjos is taken. */
    static DamagedDecisions onALineWithACondition(Path folder) throws IOException {
        Path shop = folder.resolve("shop");
        new BanjoShop(shop);
        return new DamagedDecisions(
                folder,
                shop,
                draft -> draft.getSheet(SurchargesSheet.NAME)
                        .getRow(SurchargesSheet.FIRST_ROW - 1)
                        .getCell(SurchargesSheet.DECISION)
                        .setCellValue("take"));
    }

    private void decide(Path draft, Decisions decisions) throws IOException {
        try (XSSFWorkbook open = new XSSFWorkbook(Files.newInputStream(draft))) {
            decisions.type(open);
            open.getCreationHelper().createFormulaEvaluator().evaluateAll();
            try (OutputStream saved = Files.newOutputStream(workbook)) {
                open.write(saved);
            }
        }
    }

    private static void set(Sheet sheet, String key, DecideColumn column, String words) {
        row(sheet, key).getCell(column.ordinal()).setCellValue(words);
    }

    private static Row row(Sheet sheet, String key) {
        for (int number = DecideSheet.FIRST_ROW; ; number++) {
            Row row = sheet.getRow(number - 1);
            if (row.getCell(DecideColumn.KEY.ordinal()).getStringCellValue().equals(key)) {
                return row;
            }
        }
    }

    int refused() {
        return refused;
    }

    /** Damages the workbook up to three times each, from one number of damage to another. */
    void damage(int first, int end) throws IOException {
        for (int number = first; number < end; number++) {
            Random random = new Random(number);
            byte[] damaged = whole;
            for (int times = random.nextInt(3); times >= 0; times--) {
                damaged = random.nextInt(4) > 0 ? MutatedSheet.of(damaged, random) : MutatedBytes.of(damaged, random);
            }
            Files.write(workbook, damaged);
            adopted("damage " + number);
        }
    }

    /** Returns why the workbook is refused with the entities declared in a part and the last of them, a11, asked for. */
    String refusalOf(String part, String entities) throws IOException {
        byte[] asking = MutatedSheet.with(
                whole,
                part,
                text -> text.replaceFirst("\\?>", "?><!DOCTYPE x [" + entities + "]>")
                        .replaceFirst("<(t|v)>[^<]*<", "<$1>&a11;<"));
        if (Arrays.equals(asking, MutatedSheet.with(whole, part, text -> text))) {
            throw new IllegalArgumentException("no part " + part);
        }
        Files.write(workbook, asking);
        try {
            adopt();
        } catch (Refusal refusal) {
            return refusal.getMessage();
        }
        throw new AssertionError("adopted with entities in " + part);
    }

    private void adopted(String which) throws IOException {
        Map<String, String> expected = decided;
        try {
            adopt();
        } catch (Refusal refusal) {
            refused++;
            expected = before;
            if (!refusal.getMessage().contains(workbook.getFileName().toString())) {
                throw new AssertionError(which + ": the message names no file: " + refusal.getMessage(), refusal);
            }
        } catch (RuntimeException | Error fault) {
            throw new AssertionError(which, fault);
        }
        Map<String, String> now = written();
        if (!now.equals(expected)) {
            throw new AssertionError(which + ": unsaid, the books are " + now + ", not " + expected);
        }
        putBack();
    }

    private void adopt() {
        new AdoptDecisions()
                .adopt(
                        shop,
                        Settings.DEFAULTS,
                        new ReadDecisions().read(workbook),
                        new Adoption(EFFECTIVE, DECIDED, "Orla", Optional.empty(), Adoption.LaterBook.ASK));
    }

    /** Returns every book and its lines with conditions by their files, and where nothing was decided. */
    private Map<String, String> written() throws IOException {
        Map<String, String> books = new TreeMap<>();
        for (String folder : List.of("price-book", "surcharges")) {
            for (Path file : files(folder)) {
                books.put(folder + "/" + file.getFileName(), Files.readString(file));
            }
        }
        books.put("decisions", files("decisions").size() + " records");
        return books;
    }

    private List<Path> files(String folder) throws IOException {
        if (!Files.isDirectory(shop.resolve(folder))) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(shop.resolve(folder))) {
            return files.toList();
        }
    }

    private void putBack() throws IOException {
        Files.deleteIfExists(shop.resolve("price-book").resolve(EFFECTIVE + ".csv"));
        for (String folder : List.of("decisions", "surcharges")) {
            for (Path file : files(folder)) {
                Files.delete(file);
            }
        }
    }
}
