package benchtrue.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** All versions of the price book. In force on a day is the newest version whose date is not after it. */
public final class PriceBooks {
    /** The repair type that needs no book entry. */
    public static final String ONE_OFF = "one-off";

    private final List<PriceBook> versions;

    /** Takes at least one version. */
    public PriceBooks(List<PriceBook> versions) {
        if (versions.isEmpty()) {
            throw new IllegalArgumentException("no price book");
        }
        List<PriceBook> sorted = new ArrayList<>(versions);
        sorted.sort(Comparator.comparingInt(PriceBook::effective));
        this.versions = List.copyOf(sorted);
    }

    /** Returns the versions, oldest first. */
    public List<PriceBook> versions() {
        return versions;
    }

    /** Returns the version whose day is the last. */
    public PriceBook newest() {
        return versions.get(versions.size() - 1);
    }

    /** Returns the version in force on a day; the first version for a day before it. */
    public PriceBook inForce(int day) {
        return versions.get(place(day));
    }

    /**
     * Returns a repair type as the book had it on a day; where that version lacks it, as the newest earlier version had
     * it, else the oldest later one. Empty where no version has it.
     */
    public Optional<RepairType> type(String repairType, int day) {
        int place = place(day);
        for (int i = place; i >= 0; i--) {
            Optional<RepairType> found = versions.get(i).type(repairType);
            if (found.isPresent()) {
                return found;
            }
        }
        for (int i = place + 1; i < versions.size(); i++) {
            Optional<RepairType> found = versions.get(i).type(repairType);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Returns every repair type of every version, in order. */
    public TreeSet<String> keys() {
        TreeSet<String> keys = new TreeSet<>();
        versions.forEach(version -> keys.addAll(version.types().keySet()));
        return keys;
    }

    private int place(int day) {
        int place = 0;
        for (int i = 0; i < versions.size(); i++) {
            if (versions.get(i).effective() <= day) {
                place = i;
            }
        }
        return place;
    }
}
