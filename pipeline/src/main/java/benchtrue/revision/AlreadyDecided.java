package benchtrue.revision;

import benchtrue.settings.Settings;
import benchtrue.shop.RepairType;
import java.util.List;
import java.util.Optional;

/**
 * What the owner decided already and is not asked again.
 *
 * @param kept repair types that are left as they are for a while
 * @param coming price books for days to come, the earliest first
 */
public record AlreadyDecided(List<Kept> kept, List<ComingBook> coming) {
    /** Nothing was decided yet. */
    public static final AlreadyDecided NOTHING = new AlreadyDecided(List.of(), List.of());

    public AlreadyDecided {
        kept = List.copyOf(kept);
        coming = List.copyOf(coming);
    }

    /** Returns how a row is held for what was decided about it; empty where it may be asked. */
    Optional<GuardRails> rails(RepairType type, int asOf, Settings settings) {
        Optional<GuardRails> keeps = kept.stream()
                .filter(keep -> keep.repairType().equals(type.repairType()) && keep.until() > asOf)
                .findFirst()
                .map(keep -> GuardRails.kept(type, keep, settings));
        return keeps.or(() -> pending(type, settings));
    }

    private Optional<GuardRails> pending(RepairType type, Settings settings) {
        return coming.stream()
                .filter(book -> book.decided().containsKey(type.repairType()))
                .reduce((earlier, later) -> later)
                .map(book -> GuardRails.decided(
                        type, book.decided().get(type.repairType()), book.book().effective(), settings));
    }
}
