package benchtrue.tables;

/**
 * Writes numbers as ASCII digits into a buffer, each at a place; returns the place behind. Two digits at a time, and by
 * multiplication: a division takes longer than all else that a cell takes.
 */
final class Digits {
    /** The digits of 00 to 99, one pair after the other. */
    private static final byte[] PAIRS = new byte[200];

    private static final int EIGHT_DIGITS = 100_000_000;

    static {
        for (int pair = 0; pair < 100; pair++) {
            PAIRS[2 * pair] = (byte) ('0' + pair / 10);
            PAIRS[2 * pair + 1] = (byte) ('0' + pair % 10);
        }
    }

    private Digits() {}

    /** Writes a whole number of at least 0. */
    static int whole(long number, byte[] into, int at) {
        if (number >= EIGHT_DIGITS) {
            int end = whole(number / EIGHT_DIGITS, into, at);
            return padded((int) (number % EIGHT_DIGITS), 8, into, end);
        }
        int rest = (int) number;
        int end = at + length(rest);
        int place = end;
        while (rest >= 10) {
            int hundreds = hundredth(rest);
            place -= 2;
            pair(rest - 100 * hundreds, into, place);
            rest = hundreds;
        }
        if (place > at) {
            into[at] = (byte) ('0' + rest);
        }
        return end;
    }

    /** Writes a number of at least 0 with leading zeros; {@code digits} is even. */
    static int padded(int number, int digits, byte[] into, int at) {
        int rest = number;
        for (int place = at + digits - 2; place >= at; place -= 2) {
            int hundreds = hundredth(rest);
            pair(rest - 100 * hundreds, into, place);
            rest = hundreds;
        }
        return at + digits;
    }

    private static int length(int number) {
        int length = 1;
        for (int next = 10; next <= number; next *= 10) {
            length++;
        }
        return length;
    }

    private static void pair(int number, byte[] into, int at) {
        into[at] = PAIRS[2 * number];
        into[at + 1] = PAIRS[2 * number + 1];
    }

    /** Returns the whole hundreds of a number of at least 0, exactly: 1,374,389,535 is 2^37 / 100 rounded up. */
    private static int hundredth(int number) {
        return (int) (number * 1_374_389_535L >>> 37);
    }

    /** Writes letters that are ASCII. */
    static int letters(String ascii, byte[] into, int at) {
        int end = at;
        for (int i = 0; i < ascii.length(); i++) {
            into[end++] = (byte) ascii.charAt(i);
        }
        return end;
    }
}
