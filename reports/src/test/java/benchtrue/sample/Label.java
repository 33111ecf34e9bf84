package benchtrue.sample;

/** What a technician writes beside the hours of a line. */
enum Label {
    /** Only the ticket. */
    NONE,
    /** The ticket and the line. */
    LINE,
    /** The ticket and the repair type. */
    TYPE
}
