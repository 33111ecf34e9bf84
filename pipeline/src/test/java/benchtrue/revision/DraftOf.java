package benchtrue.revision;

import java.util.List;
import java.util.Optional;

/** The draft of a young shop that never changed its price book. */
public final class DraftOf {
    private DraftOf() {}

    public static Revision changes(List<ProposedChange> changes) {
        return new Revision(changes, Optional.empty(), BackTest.none(), List.of(), List.of(), List.of(), List.of());
    }
}
