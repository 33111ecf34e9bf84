package benchtrue.reconcile;

import benchtrue.ShopFolder;
import benchtrue.shop.Balance;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Damages one file of a random untidy shop at a time and reads the shop: it must balance, or end with words that name the
 * file. Run alone with {@code -Xmx512m}: arguments are a folder, the first seed and how many files to damage.
 */
final class MutationLoop {
    private static final int FILES_PER_SHOP = 100;
    private final Path folder;
    private int refused;

    MutationLoop(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] args) throws IOException {
        MutationLoop loop = new MutationLoop(Path.of(args[0]));
        int count = Integer.parseInt(args[2]);
        loop.run(Long.parseLong(args[1]), count);
        System.out.println(count + " damaged files, " + loop.refused + " refused, the others balance");
    }

    /** Returns how many of the damaged files were refused. */
    int run(long firstSeed, int count) throws IOException {
        for (int done = 0; done < count; done += FILES_PER_SHOP) {
            long seed = firstSeed + done / FILES_PER_SHOP;
            Path shop = folder.resolve("shop-" + seed);
            damage(new DirtyShop(shop, seed, 20).shop(), seed, Math.min(FILES_PER_SHOP, count - done));
            delete(shop);
        }
        return refused;
    }

    private void damage(ShopFolder shop, long seed, int count) throws IOException {
        Random random = new Random(seed);
        List<Path> files = new ArrayList<>();
        for (String place : List.of("exports", "price-book")) {
            try (Stream<Path> found = Files.list(shop.path().resolve(place))) {
                found.sorted().forEach(files::add);
            }
        }
        for (int i = 0; i < count; i++) {
            Path file = files.get(random.nextInt(files.size()));
            byte[] whole = Files.readAllBytes(file);
            byte[] damaged = whole;
            for (int times = random.nextInt(3); times >= 0; times--) {
                damaged = mutated(damaged, random);
            }
            Files.write(file, damaged);
            read(shop, file, "seed " + seed + ", damage " + i);
            Files.write(file, whole);
        }
    }

    private void read(ShopFolder shop, Path file, String which) {
        try {
            if (!shop.reconciled().balances().stream().allMatch(Balance::holds)) {
                throw new AssertionError(which + ": a balance fails");
            }
        } catch (Refusal refusal) {
            refused++;
            if (!refusal.getMessage().contains(file.getFileName().toString())) {
                throw new AssertionError(which + ": the message names no file: " + refusal.getMessage(), refusal);
            }
        } catch (RuntimeException fault) {
            throw new AssertionError(which + ": " + file, fault);
        }
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
