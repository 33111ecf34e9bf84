package benchtrue.shop;

/** How a value that the shop did not record is written in a primitive; never zero, which is a value. */
public final class Absent {
    /** Seconds or money not recorded. */
    public static final long AMOUNT = Long.MIN_VALUE;

    /** Day or month not recorded. */
    public static final int DAY = Integer.MIN_VALUE;

    /** No ticket, line, repair type, technician or name. */
    public static final int INDEX = -1;

    private Absent() {}

    /** Returns whether seconds or money were recorded. */
    public static boolean has(long amount) {
        return amount != AMOUNT;
    }

    /** Returns whether a day or month was recorded. */
    public static boolean has(int day) {
        return day != DAY;
    }

    /** Returns {@code first} where it was recorded, else {@code second}. */
    public static long firstOf(long first, long second) {
        return has(first) ? first : second;
    }

    /** Returns {@code first} where it was recorded, else {@code second}. */
    public static int firstOf(int first, int second) {
        return has(first) ? first : second;
    }
}
