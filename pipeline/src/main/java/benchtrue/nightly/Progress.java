package benchtrue.nightly;

/** Hears how far a run is. */
public interface Progress {
    /** Nobody listens. */
    Progress UNHEARD = new Progress() {
        @Override
        public void begins(int number, int of, String what) {}

        @Override
        public void tells(String what) {}
    };

    /**
     * Hears that a stage begins.
     *
     * @param number the stage's place, from 1
     * @param of how many stages there are
     * @param what what the stage does, in words
     */
    void begins(int number, int of, String what);

    /** Hears what the owner should know at once, such as how the run before ended. */
    void tells(String what);
}
