package benchtrue.reconcile;

import benchtrue.MutatedBytes;
import benchtrue.MutatedSheet;
import benchtrue.ShopFolder;
import benchtrue.ShopSettings;
import benchtrue.intake.InAnyDialect;
import benchtrue.intake.ReadExports;
import benchtrue.nightly.Night;
import benchtrue.nightly.Progress;
import benchtrue.settings.Settings;
import benchtrue.shop.Balance;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Damages one file of a random untidy shop at a time, written as the data contract writes or in any dialect and as sheets, and
 * reads the shop, now and then through the whole night: it must balance, or end with words that name the file. Each hundred
 * damaged files are of one shop; the number of a file tells its shop and its damage. Run alone with {@code -Xmx512m}: arguments
 * are a folder, the number of the first file, and how many files to damage.
 */
final class MutationLoop {
    private static final int FILES_PER_SHOP = 100;
    private static final int NIGHT_EVERY = 40;
    private static final int TOLD_EVERY = 1_000;
    private static final long FIRST_SEED_ALONE = 1_000;
    private static final Settings QUICK =
            new ShopSettings().materiality(0).resamples(20).build();

    private final Path folder;
    private final long firstSeed;
    private volatile int at;
    private int done;
    private int refused;
    private int nights;

    MutationLoop(Path folder, long firstSeed) {
        this.folder = folder;
        this.firstSeed = firstSeed;
    }

    public static void main(String[] args) throws IOException {
        MutationLoop loop = new MutationLoop(Path.of(args[0]), FIRST_SEED_ALONE);
        loop.run(Integer.parseInt(args[1]), Integer.parseInt(args[2]));
        System.out.println(loop.told() + ", the others balance");
    }

    private String told() {
        return done + " damaged files, " + nights + " of them through the whole night, " + refused + " refused";
    }

    /** Says how to damage the file at hand once more. */
    private String which() {
        return "file " + at + " (seed " + seed(at) + ", damage " + at % FILES_PER_SHOP
                + "; again with -Dbenchtrue.damaged.from=" + at + " -Dbenchtrue.damaged.files=1)";
    }

    private long seed(int file) {
        return firstSeed + file / FILES_PER_SHOP;
    }

    /** Damages some files from a number on, and returns how many were refused so far. */
    int run(int first, int count) throws IOException {
        for (int file = first; file < first + count; file += FILES_PER_SHOP - file % FILES_PER_SHOP) {
            Path shop = folder.resolve("shop-" + seed(file));
            damage(written(shop, seed(file)), file, first + count);
            delete(shop);
        }
        return refused;
    }

    /** Every other shop is written in dialects. */
    private static Path written(Path folder, long seed) throws IOException {
        Path plain = folder.resolve("plain");
        new DirtyShop(plain, seed, 20);
        if (seed % 2 == 0) {
            return plain;
        }
        InAnyDialect.write(plain, folder.resolve("written"), seed);
        return folder.resolve("written");
    }

    /** Damages a shop's files one by one; those before the first are only passed, so that every number has its own damage. */
    private void damage(Path shop, int first, int end) throws IOException {
        Random random = new Random(seed(first));
        List<Path> files = new ArrayList<>();
        for (String place : List.of("exports", "price-book")) {
            try (Stream<Path> found = Files.list(shop.resolve(place))) {
                found.sorted().forEach(files::add);
            }
        }
        int begin = first - first % FILES_PER_SHOP;
        for (int number = begin; number < Math.min(end, begin + FILES_PER_SHOP); number++) {
            Path file = files.get(random.nextInt(files.size()));
            byte[] whole = Files.readAllBytes(file);
            byte[] damaged = whole;
            for (int times = random.nextInt(3); times >= 0; times--) {
                damaged = isSheet(file) && random.nextInt(4) > 0
                        ? MutatedSheet.of(damaged, random)
                        : MutatedBytes.of(damaged, random);
            }
            if (number >= first) {
                at = number;
                Files.write(file, damaged);
                read(shop, file);
                Files.write(file, whole);
            }
        }
    }

    private static boolean isSheet(Path file) {
        return file.toString().endsWith(".xlsx");
    }

    private void read(Path shop, Path file) {
        done++;
        try {
            balances(shop).stream()
                    .filter(balance -> !balance.holds())
                    .findFirst()
                    .ifPresent(fails -> {
                        throw new AssertionError("a balance fails: " + fails);
                    });
        } catch (Refusal refusal) {
            refused++;
            if (!refusal.getMessage().contains(file.getFileName().toString()) && !isOpenAnyway(refusal)) {
                throw new AssertionError(which() + ": the message names no file: " + refusal.getMessage(), refusal);
            }
        } catch (RuntimeException | Error fault) {
            throw new AssertionError(which() + ": " + file, fault);
        }
        if (done % TOLD_EVERY == 0) {
            System.out.println(told());
        }
    }

    /** A shop in dialects may be refused undamaged: its dates can be read in two ways. */
    private static boolean isOpenAnyway(Refusal refusal) {
        return refusal.getMessage().contains("if the day stands first");
    }

    private List<Balance> balances(Path shop) {
        if ((at + 1) % NIGHT_EVERY == 0) {
            nights++;
            return new Night(List.of(), Progress.UNHEARD, Clock.fixed(Instant.EPOCH, ZoneOffset.UTC), "1")
                    .run(shop, QUICK, ShopFolder.AS_OF)
                    .review()
                    .balances();
        }
        return new Reconcile()
                .reconcile(new ReadExports().read(shop, QUICK), QUICK, ShopFolder.AS_OF)
                .balances();
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> found = Files.walk(folder)) {
            for (Path path : found.sorted(Collections.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
