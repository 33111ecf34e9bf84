package benchtrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** What becomes of a file's bytes on a bad disk, in a broken copy or under a careless hand. */
public final class MutatedBytes {
    private MutatedBytes() {}

    /** Flips, cuts, doubles or fills in bytes, shuffles lines, or swaps columns. */
    public static byte[] of(byte[] bytes, Random random) {
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
}
