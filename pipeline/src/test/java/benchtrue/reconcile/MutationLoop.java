package benchtrue.reconcile;

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
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
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
                        ? MutatedSheet.of(damaged, random, bytes -> mutated(bytes, random))
                        : mutated(damaged, random);
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

    /** Flips, cuts, doubles or fills in bytes, shuffles lines, or swaps columns. */
    private static byte[] mutated(byte[] bytes, Random random) {
        if (bytes.length < 2) {
            return new byte[] {(byte) random.nextInt(256), '\n'};
        }
        int at = random.nextInt(bytes.length);
        int length = 1 + random.nextInt(Math.min(200, bytes.length - at));
        return switch (random.nextInt(8)) {
            case 0 -> flipped(bytes, at, random);
            case 1 -> Arrays.copyOf(bytes, at);
            case 2 -> spliced(bytes, at, at + length, new byte[0]);
            case 3 -> spliced(bytes, at, at, Arrays.copyOfRange(bytes, at, at + length));
            case 4 -> spliced(bytes, at, at, anyOf(random, "\"", ",", "\n", "\r", "\0", "\uFEFF", "'", "=", ";", "-"));
            case 5 -> shuffled(bytes, random);
            case 6 -> swapped(bytes, random);
            default -> spliced(bytes, at, at + length, random(random, length));
        };
    }

    private static byte[] flipped(byte[] bytes, int at, Random random) {
        byte[] changed = bytes.clone();
        changed[at] ^= (byte) (1 << random.nextInt(8));
        return changed;
    }

    private static byte[] spliced(byte[] bytes, int from, int to, byte[] with) {
        byte[] changed = Arrays.copyOf(bytes, bytes.length - (to - from) + with.length);
        System.arraycopy(with, 0, changed, from, with.length);
        System.arraycopy(bytes, to, changed, from + with.length, bytes.length - to);
        return changed;
    }

    private static byte[] anyOf(Random random, String... texts) {
        return texts[random.nextInt(texts.length)].getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] random(Random random, int length) {
        byte[] bytes = new byte[length];
        random.nextBytes(bytes);
        return bytes;
    }

    private static byte[] shuffled(byte[] bytes, Random random) {
        List<String> lines = lines(bytes);
        Collections.shuffle(lines, random);
        return bytes(lines);
    }

    private static byte[] swapped(byte[] bytes, Random random) {
        List<String> lines = lines(bytes);
        int left = random.nextInt(8);
        int right = random.nextInt(8);
        int from = random.nextInt(2);
        for (int i = from; i < lines.size(); i++) {
            String[] cells = lines.get(i).split(",", -1);
            if (Math.max(left, right) < cells.length) {
                String cell = cells[left];
                cells[left] = cells[right];
                cells[right] = cell;
                lines.set(i, String.join(",", cells));
            }
        }
        return bytes(lines);
    }

    private static List<String> lines(byte[] bytes) {
        return new ArrayList<>(List.of(new String(bytes, StandardCharsets.ISO_8859_1).split("\n", -1)));
    }

    private static byte[] bytes(List<String> lines) {
        return String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1);
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> found = Files.walk(folder)) {
            for (Path path : found.sorted(Collections.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
