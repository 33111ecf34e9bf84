package benchtrue.findings;

/** What the evidence says about a repair type's quote. */
public enum Verdict {
    UNDER_QUOTED("under-quoted"),
    LEANING_UNDER("leaning under"),
    ON_THE_MARK("on the mark"),
    LEANING_OVER("leaning over"),
    OVER_QUOTED("over-quoted"),
    TOO_FEW_JOBS("too few jobs"),
    NOT_JUDGED("not judged: hours missing");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /** Returns the verdict as a person reads it. */
    public String words() {
        return words;
    }
}
