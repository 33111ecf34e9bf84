package benchtrue.sample;

import java.io.IOException;

/** Takes the visits of a shop in the order they begin. */
interface VisitSink {
    void take(Worked worked) throws IOException;

    /** Takes one session shared by several visits. */
    void takeShared(Session session) throws IOException;
}
