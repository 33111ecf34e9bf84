package benchtrue.calendar;

/** Where an open ticket stands; each stands in exactly one place. */
public enum OpenState {
    FINISHED("finished, not collected"),
    WAITING("waiting"),
    ON_BENCH("on the bench"),
    NOT_BEGUN("not begun"),
    STALLED("begun and left lying");

    private final String words;

    OpenState(String words) {
        this.words = words;
    }

    /** Returns the state as a person reads it. */
    public String words() {
        return words;
    }
}
