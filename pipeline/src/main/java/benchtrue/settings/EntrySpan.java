package benchtrue.settings;

/** Over which days one entry of a time log is a sum. */
public enum EntrySpan {
    DAY(1),
    WEEK(7),
    MONTH(31);

    private final int days;

    EntrySpan(int days) {
        this.days = days;
    }

    /** Returns how many days it has at most. */
    public int days() {
        return days;
    }
}
