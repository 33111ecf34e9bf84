package benchtrue.revision;

import java.util.List;

/**
 * The drafted price book.
 *
 * @param changes one row a repair type of today's book, by code
 */
public record Revision(List<ProposedChange> changes) {
    public Revision {
        changes = List.copyOf(changes);
    }
}
