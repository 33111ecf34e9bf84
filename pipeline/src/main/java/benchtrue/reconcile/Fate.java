package benchtrue.reconcile;

/** What became of a row that was read. */
enum Fate {
    ACCEPTED("accepted"),
    REPEATED("repeated"),
    SUPERSEDED("superseded"),
    SET_ASIDE("set aside"),
    AFTER("after the as-of date");

    private final String words;

    Fate(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
