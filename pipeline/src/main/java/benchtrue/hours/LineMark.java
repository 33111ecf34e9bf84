package benchtrue.hours;

/** What a reader should know about how a line was counted. */
public enum LineMark {
    /** The quote has no hours; the book's hours on that day stand in. */
    QUOTE_FROM_BOOK,
    /** Hours that put this line right were shared over its ticket, since nobody said which line failed. */
    REWORK_SHARED,
    /** Hours that put this line right came back without a reason; counted as the shop's own. */
    REWORK_WITHOUT_REASON,
    /** Its ticket was closed without a minute of bench time; it says nothing about how long the job takes. */
    NEVER_LOGGED,
    /** It puts an earlier line right for reasons of the shop's own; nobody pays twice for that. */
    PUTS_RIGHT,
    /** It is the free adjustment that an earlier line's price promised. */
    SETTLES
}
