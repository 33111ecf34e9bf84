package benchtrue.reconcile;

/** What became of a row that was read. */
enum RowStatus {
    ACCEPTED("accepted"),
    REPEATED("repeated"),
    SUPERSEDED("superseded"),
    SET_ASIDE("set aside"),
    AFTER("after the as-of date");

    private final String words;

    RowStatus(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
