package benchtrue.settings;

/** What a number in a cell for hours counts. */
public enum HoursUnit {
    HOURS(1),
    MINUTES(60),
    /** Hundredths of an hour, written without a decimal sign: 150 is an hour and a half. */
    HUNDREDTHS(100),
    /** Hours and behind the sign their minutes: 1.30 is an hour and a half. */
    HOURS_MINUTES(1);

    private final int anHour;

    HoursUnit(int anHour) {
        this.anHour = anHour;
    }

    /** Returns how many make an hour. */
    public int anHour() {
        return anHour;
    }
}
