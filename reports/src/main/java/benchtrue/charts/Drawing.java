package benchtrue.charts;

/** The figures of a picture, ready to be laid out. */
interface Drawing {
    /**
     * Lays the picture out under a heading.
     *
     * @param flow where its parts go, from the place reached
     */
    void layOn(TextFlow flow);
}
