package benchtrue.shop;

/** How a run ends; numbers follow BSD sysexits. */
public enum ExitCode {
    /** Published, also with rows set aside. */
    PUBLISHED(0),
    /** The command line was not understood. */
    USAGE(64),
    /** A file or its columns are unusable. */
    UNUSABLE_FILE(65),
    /** The shop folder, its exports or a needed table is missing. */
    MISSING(66),
    /** A fault of the program. */
    FAULT(70),
    /** Results can't be written. */
    CANNOT_WRITE(73),
    /** Reading failed part-way. */
    READ_FAILED(74),
    /** Another run holds the lock. */
    LOCKED(75),
    /** The settings are wrong. */
    SETTINGS(78);

    private final int number;

    ExitCode(int number) {
        this.number = number;
    }

    /** Returns the number the process ends with. */
    public int number() {
        return number;
    }
}
