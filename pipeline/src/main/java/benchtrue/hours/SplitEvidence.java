package benchtrue.hours;

/** How surely the hours on a line are known. */
public enum SplitEvidence {
    /** No hours are on the line. */
    NONE,
    /** Every second was logged to the line, or it is the only line of its ticket that takes hours. */
    LOGGED,
    /** Some seconds name the line, others were split. */
    PARTLY_SPLIT,
    /** Every second was split from time on the ticket as a whole; carries less information than logged hours. */
    SPLIT
}
