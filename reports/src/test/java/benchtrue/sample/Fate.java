package benchtrue.sample;

/** What becomes of a visit. */
enum Fate {
    /** Worked on until it is done. */
    STEADY,
    /** Never begun. */
    IDLE,
    /** Begun and left. */
    HALF_FINISHED,
    /** Done and never collected. */
    UNCLAIMED,
    /** Cancelled after some work. */
    VOID
}
