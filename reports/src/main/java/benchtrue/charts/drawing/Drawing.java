package benchtrue.charts.drawing;

/** The figures of a picture, ready to be laid out. */
public interface Drawing {
    /**
     * Lays the picture out under a heading.
     *
     * @param flow where its parts go, from the place reached
     */
    void layOn(TextFlow flow);
}
